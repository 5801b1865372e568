/** How a boat is begun: a job with words, a table without figures and what to do next, all after a demo boat. */
package org.garboard.cli.start;
