/** Commands of feed, lime, mulch, ledger and shopping, with their words and JSON. */
@org.jspecify.annotations.NullMarked
package org.oldwood.cli.feeding;
