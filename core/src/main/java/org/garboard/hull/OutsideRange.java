package org.garboard.hull;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Over which length the outside can be drawn: where a bow comes to an edge it may begin a little aft of the
 * inside's forward end. The after end is a datum on sheets, and is kept or nothing is drawn.
 */
final class OutsideRange {
    /** Most of the length that is left undrawn forward; our choice. */
    private static final double MOST_LOST = 0.1;
    private static final int LOOKS_PER_CELL = 16;

    private OutsideRange() {
    }

    /**
     * Where the outside begins, and those of the inside's bounds along that lie aft of there.
     *
     * @throws HullNotDrawn if it cannot be drawn elsewhere
     */
    static double[] of(double[] bounds, List<OutsideFace> faces) {
        double from = forwardEnd(bounds, faces);
        double[] kept = Arrays.stream(bounds).filter(bound -> bound > from).toArray();
        double[] places = new double[kept.length + 1];
        places[0] = from;
        System.arraycopy(kept, 0, places, 1, kept.length);
        return places;
    }

    /** Looks from aft until there is trouble. */
    private static double forwardEnd(double[] bounds, List<OutsideFace> faces) {
        int cells = bounds.length - 1;
        double reached = Double.NaN;
        for (int i = cells * LOOKS_PER_CELL; i >= 0; i--) {
            int cell = i / LOOKS_PER_CELL;
            double share = (double) (i - cell * LOOKS_PER_CELL) / LOOKS_PER_CELL;
            double x = share == 0 ? bounds[cell] : bounds[cell] + share * (bounds[cell + 1] - bounds[cell]);
            Optional<String> trouble = new OutsideSection(faces, x).trouble();
            if (trouble.isPresent()) {
                if (!(x - bounds[0] < MOST_LOST * (bounds[cells] - bounds[0]))) {
                    throw HullNotDrawn.outside(x, trouble.get());
                }
                return reached;
            }
            reached = x;
        }
        return reached;
    }
}
