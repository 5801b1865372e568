package org.garboard.cutout.pocket;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.FlatPoint;
import org.garboard.cutout.LaidLine;
import org.garboard.cutout.Lengths;
import org.garboard.cutout.skin.AxisFrame;
import org.garboard.cutout.template.Development;
import org.garboard.cutout.template.Template.Mark;
import org.garboard.solid.Loop;
import org.garboard.units.FixedDecimal;

/**
 * A pocket's lines on the skin, laid flat together: where its walls end, its opening (the finished edge), and of a tray that is
 * let into an existing boat the hull cut and the end of the taper, each so far outside the opening along the skin.
 */
public final class NestedLines {
    /** Corners of the outline of what is laid flat are left out within this [m]; our choice. */
    private static final double THIN = 2e-4;
    /** Lines outside the opening keep to it within this [m]: a tenth of what an outline may stray; our choice. */
    private static final double TRUE = 1e-5;
    private static final double STEEPEST_TAPER = 1;

    private final AxisFrame frame;
    private final Development development;
    private final LaidLine opening;
    private final LaidLine pocketEdge;
    private final LaidLine hullCut;
    private final LaidLine taperEnd;

    private NestedLines(PocketShape shape, double cut, double taper) throws CannotBeBuilt {
        this.frame = shape.frame();
        Loop region = Loop.of(coordinates(PocketLines.thinned(PocketLines.outside(seen(frame, shape.opening()), taper), THIN)));
        this.development = Development.over(frame, region, shape.place().creasesThrough(frame, region));
        this.opening = laid(shape.opening());
        this.pocketEdge = laid(shape.mouth());
        this.hullCut = cut > 0 ? outside(cut) : LaidLine.NONE;
        this.taperEnd = cut > 0 ? outside(taper) : LaidLine.NONE;
    }

    /**
     * Of a pocket.
     *
     * @throws CannotBeBuilt where there is no skin for one of its lines
     */
    public static NestedLines of(PocketShape shape) throws CannotBeBuilt {
        double cut = shape.cutOutside();
        double laminate = shape.form().thickness();
        double scarf = shape.scarf();
        double taper = cut > 0 ? cut + scarf * laminate : 0;
        if (cut > 0 && !fits(shape, cut)) {
            throw new CannotBeBuilt("the hull would be cut " + Lengths.mm(cut) + " outside the opening, and there is no smooth bottom all round",
                "thinner laminate, or a site farther inside the bottom");
        }
        if (cut > 0 && !fits(shape, taper)) {
            double works = Math.floor(10 * longest(shape, cut, scarf * laminate) / laminate) / 10;
            throw new CannotBeBuilt("the hull would be ground to a taper of 1:" + FixedDecimal.format(scarf, 1) + ", " + Lengths.mm(taper)
                + " outside the opening, and there the bottom ends", works >= STEEPEST_TAPER
                ? "a scarf of 1:" + FixedDecimal.format(works, 1) + " at most, or a site farther inside the bottom" : "a site farther inside the bottom");
        }
        return new NestedLines(shape, cut, taper);
    }

    /** The longest taper that there is bottom for [m]. */
    private static double longest(PocketShape shape, double cut, double wished) {
        double low = 0;
        double high = wished;
        while (high - low > 1e-4) {
            double middle = (low + high) / 2;
            low = fits(shape, cut + middle) ? middle : low;
            high = low == middle ? high : middle;
        }
        return low;
    }

    private static boolean fits(PocketShape shape, double outside) {
        return shape.place().isBottom(shape.frame(), PocketLines.outside(seen(shape.frame(), shape.opening()), outside));
    }

    private static List<FlatPoint> seen(AxisFrame frame, List<Vector3D> places) {
        return places.stream().map(place -> place.subtract(frame.origin()))
            .map(from -> new FlatPoint(from.dot(frame.along()), from.dot(frame.across()))).toList();
    }

    private static double[] coordinates(List<FlatPoint> line) {
        double[] all = new double[2 * line.size()];
        for (int i = 0; i < line.size(); i++) {
            all[2 * i] = line.get(i).u();
            all[2 * i + 1] = line.get(i).v();
        }
        return all;
    }

    private LaidLine laid(List<Vector3D> places) throws CannotBeBuilt {
        List<FlatPoint> flat = new ArrayList<>();
        for (FlatPoint at : seen(frame, places)) {
            flat.add(development.flat(at.u(), at.v()));
        }
        return new LaidLine(flat, places);
    }

    private LaidLine outside(double distance) throws CannotBeBuilt {
        List<FlatPoint> flat = PocketLines.thinned(PocketLines.outside(opening.flat(), distance), TRUE);
        List<Vector3D> places = new ArrayList<>();
        for (FlatPoint point : flat) {
            FlatPoint at = development.plan(point);
            places.add(frame.toHull(at.u(), at.v(), frame.outside(at.u(), at.v())));
        }
        return new LaidLine(flat, places);
    }

    public LaidLine opening() {
        return opening;
    }

    public LaidLine pocketEdge() {
        return pocketEdge;
    }

    public LaidLine hullCut() {
        return hullCut;
    }

    public LaidLine taperEnd() {
        return taperEnd;
    }

    /** What is cut through an existing hull, as it is seen along the pocket's axis. */
    List<FlatPoint> cutSeen() {
        return seen(frame, hullCut.isEmpty() ? opening.onSkin() : hullCut.onSkin());
    }

    /** Lines fore and aft and of the station through the middle. */
    public List<Mark> cross() throws CannotBeBuilt {
        return development.cross();
    }

    /** Largest difference between a length along the skin and the same length laid flat [m]. */
    public double stretch() {
        return development.stretch();
    }
}
