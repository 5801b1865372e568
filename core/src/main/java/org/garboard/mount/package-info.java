/**
 * The ways a transducer goes on or into a bottom: footprint and what each demands of the skin.
 *
 * <p>Limits are common practice (no published source) unless a check says otherwise; each is a
 * default that a job may override.
 */
package org.garboard.mount;
