/**
 * The command that opens the garden's page for the phone, the labels for bushes, and what the page shows of the garden.
 */
@org.jspecify.annotations.NullMarked
package org.oldwood.cli.page;
