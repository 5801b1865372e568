/**
 * The files that a user names: jobs, tables and places are read whole, with every fault told; the
 * results go into a folder in which nothing of anybody else's is touched.
 */
package org.garboard.cli.files;
