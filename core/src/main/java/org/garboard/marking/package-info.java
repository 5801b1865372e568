/**
 * How a place is found again on the boat with a tape, a square and a pencil: marks, and the lengths between them.
 *
 * <p>Frame and units are those of {@link org.garboard.hull}. How far off a length may be is common practice, no
 * source: of a place ±(3 mm + 1 mm for each metre), of a shape ±2 mm; at double that the work stops.
 */
package org.garboard.marking;
