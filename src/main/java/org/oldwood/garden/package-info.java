/** One holding: beds, plants, cutting lots and the journal, and their state on any day. */
@org.jspecify.annotations.NullMarked
package org.oldwood.garden;
