/** Numbers, amounts, lists and days in words: the one way in which they are said. Uses nothing of the house. */
@org.jspecify.annotations.NullMarked
package org.oldwood.words;
