/** What is known of each crop, as data with sources. Knows no garden and no date. */
@org.jspecify.annotations.NullMarked
package org.oldwood.crop;
