/** Facts that stand in the record itself, and the list of all that answer. May use every craft. */
@org.jspecify.annotations.NullMarked
package org.oldwood.facts.record;
