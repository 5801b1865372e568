/**
 * What of a whole beam comes through a solid skin to an element inside the hull, where a single plane wave at one exact angle
 * would fall into dips of 20 dB that no beam of some degrees ever sees. Angles from the skin's normal.
 */
package org.garboard.acoustics.inhull;
