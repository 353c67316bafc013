/** Growing seasons and the dates of growth stages, with how sure they are. */
@org.jspecify.annotations.NullMarked
package org.oldwood.season;
