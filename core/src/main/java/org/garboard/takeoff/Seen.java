package org.garboard.takeoff;

/** In which reading of a point a fault shows. */
public enum Seen {
    DISTANCE, SIDE, MARK, OUT, HEIGHT
}
