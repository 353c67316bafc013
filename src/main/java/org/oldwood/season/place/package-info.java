/** The mean climate of any place, from the weather stations around it. Uses the season's months; knows no garden. */
@org.jspecify.annotations.NullMarked
package org.oldwood.season.place;
