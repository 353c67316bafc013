/** What the feeding craft tells the rules of this garden's beds and stands: books, needs, doses, lime. */
@org.jspecify.annotations.NullMarked
package org.oldwood.facts.feeding;
