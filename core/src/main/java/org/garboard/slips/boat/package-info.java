/**
 * The boat as the search for slips sees it: named lines as splines over the stations, panels between them as bulges
 * off the straight line across, every cell of the table a reading that is linear in both near the skin as it
 * is. The skin is fitted, the readings are seen from it anew, until it stays (Gauss and Newton).
 *
 * <p>How fair each row and panel is taken to be comes from the readings: as fair as makes them foretell each other
 * best. Hull frame as in the table; metres.
 */
package org.garboard.slips.boat;
