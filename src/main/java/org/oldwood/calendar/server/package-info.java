/**
 * A calendar on a server (RFC 4791): HTTP, WebDAV, what is put there and what stays. Knows items, not why they are due.
 */
@org.jspecify.annotations.NullMarked
package org.oldwood.calendar.server;
