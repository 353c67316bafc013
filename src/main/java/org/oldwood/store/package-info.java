/** Reads and writes plain documents and keeps problems with their places. Knows nothing of gardens. */
@org.jspecify.annotations.NullMarked
package org.oldwood.store;
