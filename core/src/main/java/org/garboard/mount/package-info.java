/**
 * The ways a transducer goes on or into a bottom: footprint and what each demands of the skin.
 *
 * <p>Lengths in metres, angles in radians; only a {@link org.garboard.mount.Check} is in millimetres
 * and degrees. The limits stand together in one class, each with its source; no published one is
 * known for any of them.
 */
package org.garboard.mount;
