/**
 * Angles, lengths and their notations, and the printing of decimals.
 *
 * <p>Inside the code lengths are metres and angles radians; this package is the one place
 * where feet, inches, eighths, millimetres and degrees are turned into them and back.
 */
package org.garboard.units;
