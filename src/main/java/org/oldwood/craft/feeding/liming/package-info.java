/** Lime and sulphur: how much changes a pH. Pure calculation; knows no file and no today. */
@org.jspecify.annotations.NullMarked
package org.oldwood.craft.feeding.liming;
