/** What the mulching craft tells the rules of this garden's beds. */
@org.jspecify.annotations.NullMarked
package org.oldwood.facts.mulching;
