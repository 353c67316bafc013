/** Commands that begin, fill, check and keep the record, with their words. */
@org.jspecify.annotations.NullMarked
package org.oldwood.cli.record;
