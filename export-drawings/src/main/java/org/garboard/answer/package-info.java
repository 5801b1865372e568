/** What was decided for a transducer, in words that a boatyard reads: the same on the screen, in the record and in the report. */
package org.garboard.answer;
