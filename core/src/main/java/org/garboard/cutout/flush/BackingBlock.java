package org.garboard.cutout.flush;

import java.util.List;
import org.garboard.cutout.part.SkinPlate;
import org.garboard.cutout.skin.AxisFrame;
import org.garboard.solid.Draft;
import org.garboard.solid.Draft.Looks;
import org.garboard.solid.Draft.Rim;
import org.garboard.solid.Fill;
import org.garboard.solid.Height;
import org.garboard.solid.Loop;
import org.garboard.solid.Solid;

/**
 * The block inside: its underside scribed to the inside of the skin, its top square to the axis. Over the cutout it
 * comes down on the body's top, as a recess where the body stands out of the skin, as a plug where it does not.
 */
final class BackingBlock {
    /** Recess or plug is at least so deep [m]: our choice, the bedding takes up less. */
    static final double STEP = 0.0005;
    /** Over a recess the block keeps at least so much [m]; our choice. */
    private static final double ROOF = 0.010;

    private final AxisFrame frame;
    private final Height inside;
    private final double least;
    private double top;
    private double roof;

    BackingBlock(AxisFrame frame, double thickness, double least) {
        this.frame = frame;
        this.inside = (u, v) -> frame.inside(u, v, thickness);
        this.least = least;
    }

    /** Height of its top in the frame; known once it is made. */
    double top() {
        return top;
    }

    /** Height of what bears on the body, where the block is closed over it; known once it is made. */
    double roof() {
        return roof;
    }

    /** A ring round an opening that goes right through. */
    Solid ring(Loop outer, Loop opening, double bodyTop, double step) {
        top = Math.max(highest(outer) + least, bodyTop);
        return SkinPlate.between(frame, outer, List.of(opening), step, inside, Height.level(top));
    }

    /**
     * Closed over the cutout but for the stem's hole.
     *
     * @param cutout recess, if it is one
     * @param body plug, if it is one
     */
    Solid over(Loop outer, Loop cutout, Loop body, Loop stem, double bodyTop, double step) {
        boolean plug = bodyTop < lowest(body) - STEP;
        roof = plug ? bodyTop : Math.max(bodyTop, highest(cutout) + STEP);
        top = Math.max(highest(outer) + least, roof + ROOF);
        Loop inner = plug ? body : cutout;
        Draft draft = new Draft(frame);
        Rim foot = draft.rim(outer, inside);
        Rim edge = draft.rim(inner, inside);
        Rim ceiling = draft.rim(inner, Height.level(roof));
        Rim stemLow = draft.rim(stem, Height.level(roof));
        Rim stemHigh = draft.rim(stem, Height.level(top));
        Rim brim = draft.rim(outer, Height.level(top));
        draft.face(Looks.DOWN, Fill.of(outer, List.of(inner), step), inside, List.of(foot, edge));
        if (plug) {
            draft.wallOutside(ceiling, edge);
        } else {
            draft.wallInside(edge, ceiling);
        }
        draft.face(Looks.DOWN, Fill.of(inner, List.of(stem), step), Height.level(roof), List.of(ceiling, stemLow));
        draft.wallInside(stemLow, stemHigh);
        draft.face(Looks.UP, Fill.of(outer, List.of(stem), step), Height.level(top), List.of(brim, stemHigh));
        draft.wallOutside(foot, brim);
        return draft.solid();
    }

    private double highest(Loop loop) {
        double highest = inside.at(0, 0);
        for (int i = 0; i < loop.size(); i++) {
            highest = Math.max(highest, Math.max(inside.at(loop.u(i), loop.v(i)), inside.at(loop.u(i) / 2, loop.v(i) / 2)));
        }
        return highest;
    }

    private double lowest(Loop loop) {
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < loop.size(); i++) {
            lowest = Math.min(lowest, inside.at(loop.u(i), loop.v(i)));
        }
        return lowest;
    }
}
