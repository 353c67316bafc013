/** The pruning command, its words and its JSON. */
@org.jspecify.annotations.NullMarked
package org.oldwood.cli.pruning;
