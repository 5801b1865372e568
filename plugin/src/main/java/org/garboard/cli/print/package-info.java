/**
 * Results as people and programs read them: tables in columns, CSV (RFC 4180), and the answer to a
 * job in two or three lines. Lengths are in the units of the job's drawing, or carry theirs in the
 * name of their column.
 */
package org.garboard.cli.print;
