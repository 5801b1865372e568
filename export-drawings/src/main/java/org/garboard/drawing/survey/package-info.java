/**
 * Sheet 6: a surveyor's findings on the views of an earlier set, numbered in balloons, and their schedule, which runs on to as
 * many sheets as it fills.
 */
package org.garboard.drawing.survey;
