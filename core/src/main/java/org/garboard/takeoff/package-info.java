/**
 * Points taken off a boat in the yard, and the boat's own frame found in them.
 *
 * <p><b>As measured</b>: x aft along a level line stretched under the keel, from a datum on the boat; y to
 * starboard of that line; z up from one level. Stations are plumb planes square to the line. <b>The boat's own
 * frame</b> is the hull frame: heel is taken out by what lies alike on port and starboard, trim by float marks
 * or the straight run of the keel, never by the floor. All in metres and radians.
 */
package org.garboard.takeoff;
