/** What rules may ask for: subjects, facts, amounts, and who answers. Names no craft. */
@org.jspecify.annotations.NullMarked
package org.oldwood.facts;
