/** What the water craft tells the rules of this garden's beds: their accounts and doses. */
@org.jspecify.annotations.NullMarked
package org.oldwood.facts.water;
