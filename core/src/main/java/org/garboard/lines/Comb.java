package org.garboard.lines;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.hull.Curve;
import org.garboard.hull.Hull;
import org.garboard.hull.HullCurves;
import org.garboard.hull.HullLine;

/**
 * The curvature of a line from end to end, to judge its fairness by: a fair line has teeth whose
 * tips run smoothly, and change sides only where the line is meant to turn.
 *
 * @param square unit vector square to the plane in which it is judged
 * @param branches unbroken runs, each a tooth after the other at even girth
 */
public record Comb(Vector3D square, List<List<Tooth>> branches) {
    private static final Vector3D ATHWART = Vector3D.of(0, 1, 0);
    private static final Vector3D UP = Vector3D.of(0, 0, 1);
    /** A line nearer the centreline than a micrometre runs on it [m]. */
    private static final double OFF_CENTRE = 1e-6;
    /** Teeth are set out along chords this near the skin [m]; the curvature is the skin's own. */
    private static final double CHORD = 1e-5;

    public Comb {
        branches = branches.stream().map(List::copyOf).toList();
    }

    /**
     * Combs of a line: one for a cut; for a named line one in profile and one in plan, but none in plan for a
     * line that keeps to the centreline. Empty where the line misses the hull.
     *
     * @param spacing of the teeth at most [m]
     */
    public static List<Comb> of(Hull hull, DrawnLine line, double spacing) {
        if (line instanceof DrawnLine.Cut cut) {
            List<List<Tooth>> branches = cut.on(hull, CHORD).stream()
                .map(curve -> new CutTeeth(hull.panels().get(curve.panel()), cut.square())
                    .on(EvenSteps.along(curve.points(), spacing)))
                .filter(teeth -> teeth.size() > 1).toList();
            return branches.isEmpty() ? List.of() : List.of(new Comb(cut.square(), branches));
        }
        HullLine named = ((DrawnLine.Named) line).line();
        List<Curve> pieces = new HullCurves(hull).line(named, CHORD);
        List<Comb> combs = new ArrayList<>();
        combs.add(named(hull, named, pieces, ATHWART, spacing));
        if (pieces.stream().flatMap(piece -> piece.points().stream()).anyMatch(foot -> foot.getY() > OFF_CENTRE)) {
            combs.add(named(hull, named, pieces, UP, spacing));
        }
        return combs;
    }

    private static Comb named(Hull hull, HullLine line, List<Curve> pieces, Vector3D square, double spacing) {
        return new Comb(square, pieces.stream().map(piece ->
            NamedTeeth.of(hull, line, piece).in(square, EvenSteps.along(piece.points(), spacing))).toList());
    }

    /** The largest curvature of all [1/m]. */
    public double largest() {
        return branches.stream().flatMap(List::stream).mapToDouble(Tooth::curvature).max().orElse(0);
    }
}
