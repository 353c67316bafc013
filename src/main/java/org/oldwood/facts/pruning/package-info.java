/** What the pruning craft tells the rules of this garden's plants: facts, cuts, minutes, crops. */
@org.jspecify.annotations.NullMarked
package org.oldwood.facts.pruning;
