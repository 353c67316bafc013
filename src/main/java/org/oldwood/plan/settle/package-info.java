/** Decides what is done of a task, from the journal's entries, its shares and its times. Knows no rule and no plan. */
@org.jspecify.annotations.NullMarked
package org.oldwood.plan.settle;
