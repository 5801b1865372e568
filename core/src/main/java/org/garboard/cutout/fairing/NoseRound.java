package org.garboard.cutout.fairing;

/**
 * How the block's face is rounded at its forward end: seen from the side a quarter of an ellipse, upright at the nose, running
 * out into the face; alike all across the block. Lengths [m].
 *
 * @param height of the ellipse, which leaves the nose a little of its height square
 * @param length over which it runs out: all the room there is ahead of the body
 */
public record NoseRound(double height, double length) {
    /** Height that is left square at the nose and beside it [m]: our choice, a feather's edge breaks off. */
    static final double LAND = 0.001;

    /** How far the face is taken back at a distance abaft of the nose. */
    double back(double fromNose) {
        return height * share(fromNose);
    }

    private double share(double fromNose) {
        double ahead = Math.max(0, Math.min(1, 1 - fromNose / length));
        return 1 - Math.sqrt(1 - ahead * ahead);
    }

    /** The highest round that leaves a land at a place where the block's side is so high. */
    double heightFor(double fromNose, double side) {
        double share = share(fromNose);
        return share > 0 ? (side - LAND) / share : Double.POSITIVE_INFINITY;
    }

    /** Places abaft of the nose between which chords stray by so much at most, from 0 to where the round runs out. */
    double[] stations(double chord) {
        double larger = Math.max(height, length);
        int pieces = Math.max(4, (int) Math.ceil(Math.PI / 4 / Math.acos(Math.max(0, 1 - chord / larger))));
        double[] places = new double[pieces + 1];
        for (int i = 0; i < pieces; i++) {
            places[i] = length * (1 - Math.cos(Math.PI / 2 * i / pieces));
        }
        places[pieces] = length;
        return places;
    }
}
