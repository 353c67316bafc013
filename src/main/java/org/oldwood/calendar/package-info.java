/** iCalendar files: writing, reading back, publishing. Knows tasks, not how they came about. */
@org.jspecify.annotations.NullMarked
package org.oldwood.calendar;
