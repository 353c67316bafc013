/** Daily weather: its file, its readers, its means. Knows no crop and no garden. */
@org.jspecify.annotations.NullMarked
package org.oldwood.season.weather;
