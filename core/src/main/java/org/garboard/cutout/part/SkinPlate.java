package org.garboard.cutout.part;

import java.util.ArrayList;
import java.util.List;
import org.garboard.cutout.skin.AxisFrame;
import org.garboard.solid.Draft;
import org.garboard.solid.Draft.Looks;
import org.garboard.solid.Draft.Rim;
import org.garboard.solid.Fill;
import org.garboard.solid.Height;
import org.garboard.solid.Loop;
import org.garboard.solid.Placement;
import org.garboard.solid.Solid;

/** A body between two faces over the same loops: skin with its holes, a block on it. */
public final class SkinPlate {
    private SkinPlate() {
    }

    /**
     * Everything between two faces over a loop, less its holes.
     *
     * @param step of the triangles [m]
     * @param upper above lower everywhere
     */
    public static Solid between(Placement frame, Loop outer, List<Loop> holes, double step, Height lower, Height upper) {
        Draft draft = new Draft(frame);
        Fill fill = Fill.of(outer, holes, step);
        List<Loop> loops = new ArrayList<>();
        loops.add(outer);
        loops.addAll(holes);
        List<Rim> below = loops.stream().map(loop -> draft.rim(loop, lower)).toList();
        List<Rim> above = loops.stream().map(loop -> draft.rim(loop, upper)).toList();
        draft.face(Looks.DOWN, fill, lower, below);
        draft.face(Looks.UP, fill, upper, above);
        draft.wallOutside(below.get(0), above.get(0));
        for (int i = 1; i < loops.size(); i++) {
            draft.wallInside(below.get(i), above.get(i));
        }
        return draft.solid();
    }

    /** The skin itself, its edges and holes along the axis. */
    public static Solid skin(AxisFrame frame, Loop outer, List<Loop> holes, double step, double thickness) {
        return between(frame, outer, holes, step, frame::outside, (u, v) -> frame.inside(u, v, thickness));
    }
}
