/** Depth, volume and renewal of mulches. Pure calculation; knows no file and no today. */
@org.jspecify.annotations.NullMarked
package org.oldwood.craft.mulching;
