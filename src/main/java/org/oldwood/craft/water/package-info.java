/** The water account of a bed's root zone. Pure calculation; knows no file and no today. */
@org.jspecify.annotations.NullMarked
package org.oldwood.craft.water;
