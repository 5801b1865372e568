package org.garboard.flow.streams;

/**
 * A place on a streamline, hull frame [m].
 *
 * @param run how far the water has come along the skin from the line's forward end [m]
 * @param speed over the stream's
 */
public record StreamPoint(double x, double y, double z, double run, double speed) {

    /** Pressure over that of still water at the same depth, in units of half the density times speed squared. */
    public double pressure() {
        return 1 - speed * speed;
    }

    double distance(StreamPoint other) {
        return Math.sqrt(Math.pow(x - other.x, 2) + Math.pow(y - other.y, 2) + Math.pow(z - other.z, 2));
    }
}
