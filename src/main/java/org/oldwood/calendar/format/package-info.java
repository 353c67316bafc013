/** iCalendar as text (RFC 5545): lines, folding, escaping, reading. Knows no task. */
@org.jspecify.annotations.NullMarked
package org.oldwood.calendar.format;
