package org.garboard.drawing.sheets;

/** How far off a mark on the boat may be. Common practice, no source. */
final class Marking {

    /** For the shape of an outline, and for diagonals [mm]. */
    static final double SHAPE = 2;
    /** For the way round an outline [mm]. */
    static final double ROUND = 4;
    /** For a depth in the pocket [mm]. */
    static final double DEPTH = 1;

    /** By which an opening may be larger, never smaller [mm]. */
    static final double OPENING = 1;

    private Marking() {
    }

    /** Of a place at the end of a tape [mm], to the millimetre: 3 mm and 1 mm for each metre. */
    static double place(double metres) {
        return Math.rint(3 + Math.abs(metres));
    }
}
