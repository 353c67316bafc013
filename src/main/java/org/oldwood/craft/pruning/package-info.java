/** What to take out of a bush or a row of canes. Pure calculation; knows no file and no today. */
@org.jspecify.annotations.NullMarked
package org.oldwood.craft.pruning;
