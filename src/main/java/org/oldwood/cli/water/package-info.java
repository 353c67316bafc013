/** Commands of water and thirst, with their words and JSON. */
@org.jspecify.annotations.NullMarked
package org.oldwood.cli.water;
