/** Commands, wiring, printing and the clock: the only package that knows what day it is. */
@org.jspecify.annotations.NullMarked
package org.oldwood.cli;
