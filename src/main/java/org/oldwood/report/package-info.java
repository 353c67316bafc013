/** Tasks and states as text, JSON and pages. */
@org.jspecify.annotations.NullMarked
package org.oldwood.report;
