/** What the cuttings craft tells the rules of this garden's cuttings and parents. */
@org.jspecify.annotations.NullMarked
package org.oldwood.facts.cuttings;
