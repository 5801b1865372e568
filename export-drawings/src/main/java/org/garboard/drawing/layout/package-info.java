/**
 * How a sheet is set out: frame, title block, tables and notes, and where each view goes so that
 * nothing overlaps and nothing leaves the frame. Knows paper, not boats.
 */
package org.garboard.drawing.layout;
