/** Commands that write, read back and publish calendars. */
@org.jspecify.annotations.NullMarked
package org.oldwood.cli.calendar;
