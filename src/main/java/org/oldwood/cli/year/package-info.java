/** Commands that tell the year: tasks, why, the sheet, the sources, with their words and JSON. */
@org.jspecify.annotations.NullMarked
package org.oldwood.cli.year;
