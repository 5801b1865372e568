package org.garboard.cutout.pocket;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.FlatPoint;
import org.garboard.cutout.Lengths;
import org.garboard.cutout.part.BodyOutline;
import org.garboard.cutout.template.Template;
import org.garboard.cutout.template.Template.RoundHole;
import org.garboard.cutout.template.Template.Up;
import org.garboard.mount.pocket.Walls.Rebate;
import org.garboard.mount.pocket.Walls.Screws;
import org.garboard.solid.Loop;

/**
 * Where the screws of a body's flange go: along the middle of the ledge, one at the middle of each corner, the others evenly
 * between them, alike on all four quarters, so many as bring them as near as is wished but never nearer than three diameters.
 */
public final class FlangeScrews {
    /** From a hole's middle to an edge of the ledge, in its diameters: common practice, no source. */
    private static final double FROM_EDGE = 1.5;
    /** From one hole to the next at least, in diameters: common practice, no source. */
    private static final double FROM_EACH_OTHER = 3;
    /** Straight across a corner of a quarter circle, as a part of the way round it: as much as it ever takes off. */
    private static final double STRAIGHT = 2 * Math.sqrt(2) / Math.PI;
    /** Of a hole, and between two [m]: our choice, what a boat is screwed together with. */
    private static final double SMALLEST = 0.001;
    private static final double LARGEST = 0.020;
    private static final double FARTHEST = 0.5;

    private final BodyOutline inner;
    private final double width;
    private final Screws screws;
    private final double chord;

    private FlangeScrews(BodyOutline inner, double width, Screws screws, double chord) {
        this.inner = inner;
        this.width = width;
        this.screws = screws;
        this.chord = chord;
    }

    static void check(Rebate rebate) throws CannotBeBuilt {
        Screws screws = rebate.screws().orElseThrow();
        PocketLimits.between("holes for screws of ", 1000 * screws.hole(), 1000 * SMALLEST, 1000 * LARGEST, " mm");
        PocketLimits.between("screws that stand apart by ", 1000 * screws.apart(), 1000 * FROM_EACH_OTHER * screws.hole(), 1000 * FARTHEST, " mm");
        double least = FROM_EDGE * screws.hole();
        if (rebate.width() / 2 < least - 1e-9) {
            double most = Math.floor(1e4 * rebate.width() / 2 / FROM_EDGE + 1e-6) / 10;
            throw new CannotBeBuilt("holes of " + Lengths.mm(screws.hole()) + " for screws come " + Lengths.mm(rebate.width() / 2) + " from the edges of a ledge "
                + Lengths.mm(rebate.width()) + " wide, and a diameter and a half is least, " + Lengths.mm(least), "a ledge of " + Lengths.mmUp(2 * least)
                + " or more" + (most >= 1000 * SMALLEST ? ", or holes of " + Lengths.mm(most / 1000) + " at most" : ""));
        }
    }

    /** The template of a pocket's ledge, as it is drilled; empty where no screws are told. */
    public static List<Template> templates(PocketShape shape) {
        return shape.form().walls().rebate().flatMap(rebate -> rebate.screws().map(screws -> {
            PocketForm form = shape.form();
            double out = new WallProfile(form.walls(), form.depth(), form.face(), 0, form.chord()).toLedge();
            return new FlangeScrews(form.floor().widened(out), rebate.width(), screws, form.chord()).template();
        })).stream().toList();
    }

    private Template template() {
        return new Template("flange-drilling", Up.OUTSIDE, flat(inner.widened(width).loop(chord, 1)), List.of(flat(inner.loop(chord, 1))),
            holes(), List.of(), 0);
    }

    private static List<FlatPoint> flat(Loop loop) {
        return IntStream.range(0, loop.size()).mapToObj(i -> new FlatPoint(loop.u(i), loop.v(i))).toList();
    }

    private List<RoundHole> holes() {
        BodyOutline middle = inner.widened(width / 2);
        double side = middle.length() - 2 * middle.radius();
        double end = middle.width() - 2 * middle.radius();
        double corner = Math.PI / 2 * middle.radius();
        List<RoundHole> holes = new ArrayList<>();
        // from the middle of a corner along an end or a side to that of the next, beginning after starboard
        double[] straight = {side, end, side, end};
        for (int quarter = 0; quarter < 4; quarter++) {
            double way = straight[quarter] + corner;
            int most = Math.max(1, (int) Math.floor(STRAIGHT * way / (FROM_EACH_OTHER * screws.hole())));
            int pieces = Math.min(most, (int) Math.ceil(way / screws.apart() - 1e-9));
            for (int i = 0; i < pieces; i++) {
                holes.add(new RoundHole(at(middle, quarter, straight[quarter], way * i / pieces), screws.hole()));
            }
        }
        return holes;
    }

    /** So far along from the middle of a corner, counter-clockwise seen from inside the boat. */
    private static FlatPoint at(BodyOutline middle, int quarter, double straight, double way) {
        double r = middle.radius();
        double half = Math.PI / 4 * r;
        double round = way < half ? way / r + Math.PI / 4 : way > half + straight ? (way - half - straight) / r + Math.PI / 2 : Math.PI / 2;
        int centre = way > half + straight ? quarter + 1 : quarter;
        double angle = quarter * Math.PI / 2 + round;
        double u = (centre % 4 == 0 || centre % 4 == 3 ? 1 : -1) * (middle.length() / 2 - r);
        double v = (centre % 4 < 2 ? 1 : -1) * (middle.width() / 2 - r);
        double along = way >= half && way <= half + straight ? way - half : 0;
        double ahead = quarter * Math.PI / 2 + Math.PI;
        return new FlatPoint(u + r * Math.cos(angle) + along * Math.cos(ahead), v + r * Math.sin(angle) + along * Math.sin(ahead));
    }
}
