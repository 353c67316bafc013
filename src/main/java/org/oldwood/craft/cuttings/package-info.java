/** From a lot of cuttings to plants and fruit. Pure calculation; knows no file and no today. */
@org.jspecify.annotations.NullMarked
package org.oldwood.craft.cuttings;
