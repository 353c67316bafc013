/**
 * Tasks as iCalendar files (RFC 5545, RFC 7986) and on calendar servers (RFC 4791), and what was ticked off there on
 * its way back. Decides how a task looks in a calendar; knows nothing of why and when a task is due.
 */
@org.jspecify.annotations.NullMarked
package org.oldwood.calendar;
