/** Commands of stages, chill, heat and weather, with their words and JSON. */
@org.jspecify.annotations.NullMarked
package org.oldwood.cli.season;
