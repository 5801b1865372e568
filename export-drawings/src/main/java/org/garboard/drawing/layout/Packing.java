package org.garboard.drawing.layout;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.garboard.drawing.Box;

/**
 * Sets pieces one after another, and goes back to try another shape or corner when a later piece
 * finds no room. The first way found is taken, so preferred shapes of early pieces come first.
 */
final class Packing {

    private final List<Piece> pieces;
    /** The least that the pieces from each on take up, with half the gap on every side [mm2]. */
    private final double[] least;
    private final Deque<Cluster> placed = new ArrayDeque<>();
    private int trialsLeft;

    private Packing(List<Piece> pieces, double gap, int trials) {
        this.pieces = pieces;
        this.trialsLeft = trials;
        this.least = new double[pieces.size() + 1];
        for (int i = pieces.size() - 1; i >= 0; i--) {
            least[i] = least[i + 1] + pieces.get(i).shapes().stream().mapToDouble(shape -> FreeSpace.size(shape.bounds(), gap)).min().orElse(0);
        }
    }

    /**
     * The pieces in their places, in their order; empty when no way is found to set them all.
     *
     * @param trials ways tried before it is given up
     */
    static Optional<List<Cluster>> of(List<Piece> pieces, FreeSpace space, int trials) {
        Packing packing = new Packing(pieces, space.gap(), trials);
        return packing.place(0, space) ? Optional.of(List.copyOf(packing.placed)) : Optional.empty();
    }

    private boolean place(int index, FreeSpace space) {
        if (index == pieces.size()) {
            return true;
        }
        if (least[index] > space.left()) {
            return false;
        }
        Piece piece = pieces.get(index);
        for (Cluster shape : piece.shapes()) {
            for (Box place : places(shape, piece, space)) {
                FreeSpace left = space.without(place);
                if (--trialsLeft < 0) {
                    return false;
                }
                if (eachFits(index + 1, left) && place(index + 1, left)) {
                    placed.addFirst(shape.movedBy(place.left() - shape.bounds().left(),
                            place.bottom() - shape.bounds().bottom()));
                    return true;
                }
            }
        }
        return false;
    }

    /** Different places only, in the order of the piece's corners. */
    private static Set<Box> places(Cluster shape, Piece piece, FreeSpace space) {
        Set<Box> places = new LinkedHashSet<>();
        for (Piece.Corner corner : piece.corners()) {
            space.nearest(shape.bounds(), corner).ifPresent(places::add);
        }
        return places;
    }

    /** Whether each piece still to come would fit alone; else there is no use in going on. */
    private boolean eachFits(int from, FreeSpace space) {
        for (Piece piece : pieces.subList(from, pieces.size())) {
            if (piece.shapes().stream().noneMatch(shape -> space.holds(shape.bounds()))) {
                return false;
            }
        }
        return true;
    }
}
