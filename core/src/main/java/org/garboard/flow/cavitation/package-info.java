/**
 * At which speed water begins to boil on a face's edge, a fairing's nose, a pocket's edge.
 *
 * <p>Smooth bodies without incoming wake, by potential flow: take a margin for roughness, waves, air in the
 * water. Bubbles of air drawn under the hull pass a face long before water boils on it.
 */
package org.garboard.flow.cavitation;
