/**
 * What every command shares: reading the command line, printing, wiring, failing. Commands of the trade stand beside.
 */
@org.jspecify.annotations.NullMarked
package org.oldwood.cli.command;
