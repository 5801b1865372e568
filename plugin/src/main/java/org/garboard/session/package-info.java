/**
 * The program kept at hand for a host, such as a CAD program: requests on standard input, replies on standard output,
 * lines of UTF-8, no network. It knows command lines as words and nothing of boats.
 */
package org.garboard.session;
