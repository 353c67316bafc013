package org.oldwood.craft.pruning;

/**
 * Stems of one age that come out for one reason.
 *
 * @param age the class, as in the count
 * @param number at least 1
 */
public record Taken(int age, int number, Why why) {}
