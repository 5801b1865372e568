package org.garboard.mount;

import org.garboard.craft.Transducer;

/**
 * What goes into the bottom and what the job asks of the way it goes in.
 *
 * @param transducer the body
 * @param pocket wishes for a keel pocket; other mounts pass them over
 */
public record Installation(Transducer transducer, PocketWish pocket) {
}
