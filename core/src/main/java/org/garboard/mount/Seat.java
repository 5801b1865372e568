package org.garboard.mount;

/** How a footprint lies to the keel line, and so which places come into question for it. */
public enum Seat {
    /** Anywhere on the bottom, to one side of the keel line. */
    BESIDE_KEEL,
    /** On the lower edge of the transom, to one side of the keel line. */
    BEHIND_TRANSOM,
    /** Centred on the keel line, half of it on either side. */
    ATHWART_KEEL
}
