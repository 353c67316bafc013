/** What a parent bush may give. Pure calculation; knows no garden. */
@org.jspecify.annotations.NullMarked
package org.oldwood.craft.cuttings.parent;
