package org.garboard.cutout.pocket;

import java.util.List;
import java.util.Locale;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.FlatPoint;
import org.garboard.cutout.Lengths;
import org.garboard.solid.Draft.Looks;
import org.garboard.solid.Loop;
import org.garboard.solid.Parting;
import org.garboard.solid.Solid;
import org.garboard.solid.Weave;

/**
 * The skin round a pocket as one closed body: its outside, its inside, and its edges along the pocket's axis. Of an
 * existing boat with the hull cut through it; of one still to be built with the pocket molded in it.
 */
final class LocalSkin {
    /** How much of the skin is shown round the cut [m], the widest that lies on smooth bottom; our choice. */
    private static final double[] ROUND = {0.100, 0.050, 0.020};
    private static final double SAME = 1e-6;

    private final PocketPlace place;
    private final PocketForm form;
    private final PocketSurface surface;
    private final double thickness;

    /** @param thickness of the skin [m] */
    LocalSkin(PocketPlace place, PocketForm form, PocketSurface surface, double thickness) {
        this.place = place;
        this.form = form;
        this.surface = surface;
        this.thickness = thickness;
    }

    /** @param cut through the hull, as seen along the pocket's axis */
    Solid cutThrough(List<FlatPoint> cut) throws CannotBeBuilt {
        Loop hole = Rim.through(form, cut);
        Loop rim = rim(hole);
        PartedFace face = face(rim, hole);
        Weave weave = new Weave(form.frame());
        int[] lower = PartedFace.lifted(weave, rim, form.frame()::outside);
        int[] lowerHole = PartedFace.lifted(weave, hole, form.frame()::outside);
        int[] upper = PartedFace.lifted(weave, rim, this::inside);
        int[] upperHole = PartedFace.lifted(weave, hole, this::inside);
        face.lay(weave, Looks.DOWN, PocketBodies.concat(lower, lowerHole), form.frame()::outside);
        face.lay(weave, Looks.UP, PocketBodies.concat(upper, upperHole), this::inside);
        weave.band(Looks.UP, lower, upper);
        weave.band(Looks.DOWN, lowerHole, upperHole);
        return PocketBodies.sound(weave);
    }

    /** As laid up in a mold that has the pocket in it. */
    Solid molded() throws CannotBeBuilt {
        if (Math.abs(form.thickness() - thickness) > SAME) {
            throw new CannotBeBuilt("the pocket's laminate is " + Lengths.mm(form.thickness()) + " thick and the skin beside it "
                + Lengths.mm(thickness) + ", and where one runs into the other is not told", "a laminate as thick as the skin");
        }
        double[] outer = surface.net();
        double[] inner = surface.net(thickness);
        int last = surface.rings() - 1;
        Loop opening = WovenFace.outline(surface, outer, last);
        Loop behind = WovenFace.outline(surface, inner, last);
        Loop rim = rim(opening);
        Weave weave = new Weave(form.frame());
        WovenFace below = WovenFace.of(weave, surface, outer);
        WovenFace above = WovenFace.of(weave, surface, inner);
        below.lay(Looks.DOWN, below.allRound(), form.depth());
        above.lay(Looks.UP, above.allRound(), form.depth() + thickness);
        int[] lower = PartedFace.lifted(weave, rim, form.frame()::outside);
        int[] upper = PartedFace.lifted(weave, rim, this::inside);
        face(rim, opening).lay(weave, Looks.DOWN, PocketBodies.concat(lower, below.last()), form.frame()::outside);
        face(rim, behind).lay(weave, Looks.UP, PocketBodies.concat(upper, above.last()), this::inside);
        weave.band(Looks.UP, lower, upper);
        return PocketBodies.sound(weave);
    }

    private PartedFace face(Loop rim, Loop hole) {
        return new PartedFace(Parting.of(rim, List.of(hole), form.creases(), form.step()), form.step());
    }

    /** Widest where there is room for it. */
    private Loop rim(Loop cut) throws CannotBeBuilt {
        CannotBeBuilt narrowest = new CannotBeBuilt("no rim", "a rim");
        for (double width : ROUND) {
            Loop rim = Rim.outside(form, cut, width);
            try {
                List<Vector3D> line = Rim.onSkin(form, rim);
                String what = String.format(Locale.ROOT, "the %.0f mm of skin round the cut", 1000 * width);
                if (line.stream().anyMatch(at -> !at.isFinite())) {
                    throw new CannotBeBuilt(what + " run off the skin", "a site farther inside the bottom");
                }
                place.requireOffSteps(what, line);
                place.requireSmooth(what, line);
                return rim;
            } catch (CannotBeBuilt tooWide) {
                narrowest = tooWide;
            }
        }
        throw narrowest;
    }

    private double inside(double u, double v) {
        return form.inside(u, v, thickness);
    }
}
