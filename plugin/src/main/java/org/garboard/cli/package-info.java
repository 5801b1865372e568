/**
 * The command line: one class per command, which parses, calls the core and prints.
 *
 * <p>Results go to standard output, messages to standard error. Bare lengths on the command line
 * are metres in the hull frame, see {@link org.garboard.hull}.
 */
package org.garboard.cli;
