/**
 * Splines, planes and plane figures: geometry that knows nothing of boats.
 *
 * <p>Lengths are in whatever unit the caller uses throughout; frames are the caller's.
 */
package org.garboard.geometry;
