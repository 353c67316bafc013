package org.oldwood.sheet;

/**
 * A label for a bush.
 *
 * @param id the bush's id, which is all that its code holds
 * @param side of the code with its margin, in modules
 * @param code its dark modules as an SVG path
 */
public record Label(String id, String words, int side, String code) {}
