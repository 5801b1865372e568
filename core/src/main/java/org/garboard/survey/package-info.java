/**
 * What a surveyor found on a boat, and where that lies on her hull: places as a surveyor tells them, by station and girth,
 * by distance and side, or by region, laid on the skin. Hull frame as in {@link org.garboard.hull}, metres.
 */
package org.garboard.survey;
