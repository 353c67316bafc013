/** Reference evapotranspiration by FAO-56, term by term. Pure calculation; knows no bed and no crop. */
@org.jspecify.annotations.NullMarked
package org.oldwood.craft.water.evapotranspiration;
