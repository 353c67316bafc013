/**
 * The page for the phone: a small server at home, who may ask it, and what it answers. Knows no garden; a desk answers
 * for it.
 */
@org.jspecify.annotations.NullMarked
package org.oldwood.page;
