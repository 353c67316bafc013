/** How many of so many cuttings live, as distributions. Pure calculation; knows no crop and no garden. */
@org.jspecify.annotations.NullMarked
package org.oldwood.craft.cuttings.survival;
