/** Sheet 8: a later record drawn over an earlier one, the earlier dashed, the later bold, and how far the places moved. */
package org.garboard.drawing.revision;
