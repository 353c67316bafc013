/** Tasks gathered into outings. Uses the plan; no output formats here, and no rule or craft by name. */
@org.jspecify.annotations.NullMarked
package org.oldwood.plan.round;
