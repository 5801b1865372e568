/**
 * What the skin is made of, how thick it is at a place, and what that allows: sound through it, a fitting in
 * it, a hole in its planking. Hull frame; metres and radians; findings in millimetres, degrees and decibels.
 *
 * <p>What is not told is not known; nothing is taken to be solid, clear or thick enough.
 */
package org.garboard.skin;
