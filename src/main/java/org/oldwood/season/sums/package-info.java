/** Chill and heat added up hour by hour, model by model. Pure calculation over days; knows no crop and no garden. */
@org.jspecify.annotations.NullMarked
package org.oldwood.season.sums;
