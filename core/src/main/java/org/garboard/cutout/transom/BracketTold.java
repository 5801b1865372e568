package org.garboard.cutout.transom;

import java.util.List;
import java.util.OptionalDouble;
import org.garboard.cutout.transom.BracketWish.Screw;

/**
 * What a job tells of a transom mount's bracket, and need not. Lengths [m].
 *
 * @param below how far the face is to hang below the bottom where the bottom comes lowest over it
 * @param screws of the maker's bracket; empty where they are not told
 */
public record BracketTold(OptionalDouble below, List<Screw> screws) {
    public static final BracketTold NOTHING = new BracketTold(OptionalDouble.empty(), List.of());

    public BracketTold {
        screws = List.copyOf(screws);
    }
}
