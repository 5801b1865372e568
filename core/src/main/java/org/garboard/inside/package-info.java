/**
 * What is inside the boat behind the bottom: rooms as boxes on the skin, each with what it was measured from,
 * and whether a stem, its block, a hand and a wrench find room between them.
 *
 * <p>In plan the hull frame, metres; upward from the inside of the skin, for that is where a rule is set.
 * Only a stretch that was looked at can be free: elsewhere nothing is known.
 */
package org.garboard.inside;
