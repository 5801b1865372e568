package org.garboard.offsets;

/** An end of the surface that is no end of the boat. */
public enum OpenEnd {
    FORWARD, AFTER
}
