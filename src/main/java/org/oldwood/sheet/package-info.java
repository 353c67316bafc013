/**
 * The year sheet: one HTML page that shows a garden's year, drawn and in words. Builds what the page says from the plan
 * and the crafts, and lets templates write it; works out no figure of its own.
 */
package org.oldwood.sheet;
