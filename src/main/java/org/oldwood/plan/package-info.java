/** Rules, subjects and seasons become tasks. No output formats here. */
@org.jspecify.annotations.NullMarked
package org.oldwood.plan;
