/** Many jobs side by side: which there are, what came of each, and a summary of them all. */
package org.garboard.cli.fleet;
