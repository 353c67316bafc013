/**
 * The sheet's first page: the rounds of now or of a month, and the cards of the next cuts. Takes the plan's rounds as
 * they are and works out no figure of its own.
 */
@NullMarked
package org.oldwood.sheet.round;

import org.jspecify.annotations.NullMarked;
