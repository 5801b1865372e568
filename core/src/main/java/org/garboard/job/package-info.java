/** One boat and one task, and what was decided for it, as plain records; knows no XML. */
package org.garboard.job;
