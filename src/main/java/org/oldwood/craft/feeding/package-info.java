/** Plant food, lime and sulphur. Pure calculation; knows no file and no today. */
@org.jspecify.annotations.NullMarked
package org.oldwood.craft.feeding;
