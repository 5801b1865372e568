/** The blank worksheet for taking a boat off in the yard: how to measure, and a list to fill in. */
package org.garboard.drawing.worksheet;
