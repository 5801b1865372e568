package org.garboard.cutout;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.craft.Transducer;
import org.garboard.cutout.PocketOutcome.Built;
import org.garboard.cutout.PocketOutcome.Refused;
import org.garboard.hull.Hull;
import org.garboard.hull.Step;
import org.garboard.mount.PocketWish;

/** Cuts a keel pocket for a transducer: floor, walls, ramps, and where they come out through the skin. */
public final class KeelPocketCut {
    /** A face this little proud of the skin is flush [m]; our choice, less than a coat of paint. */
    private static final double FLUSH = 1e-4;

    private final Hull hull;
    private final PocketFrame frame;
    private final PocketForm form;
    private final PocketOpening opening;

    private KeelPocketCut(Hull hull, PocketFrame frame, PocketForm form) {
        this.hull = hull;
        this.frame = frame;
        this.form = form;
        this.opening = new PocketOpening(frame, form);
    }

    /**
     * Cuts a pocket athwart the keel.
     *
     * @param x of its middle, aft of station 0 [m]
     * @return the pocket, or the figure that fails and what would work
     */
    public static PocketOutcome cut(Hull hull, Transducer transducer, PocketWish wish, double x) {
        double length = transducer.length() + 2 * wish.gap();
        double width = transducer.width() + 2 * wish.gap();
        double radius = transducer.cornerRadius() > 0 ? transducer.cornerRadius() + wish.gap() : 0;
        double lesser = Math.min(length, width);
        if (radius > lesser / 2) {
            return new Refused("a corner radius of " + mm(radius) + " is more than half the pocket's lesser side of "
                    + mm(lesser), "a corner radius of the body of " + mm(lesser / 2 - wish.gap()) + " at most");
        }
        if (x - length / 2 < hull.firstSection() || x + length / 2 > hull.foot()) {
            return new Refused("a pocket " + mm(length) + " long with its middle at x = " + mm(x)
                    + " runs beyond the ends of the table", "x from " + mm(hull.firstSection() + length / 2)
                    + " to " + mm(hull.foot() - length / 2));
        }
        PocketFrame frame = new PocketFrame(hull, x, length);
        double edgeRise = edgeRise(frame, new PocketForm(length, width, radius, 0, 0, 0));
        if (Double.isNaN(edgeRise)) {
            return new Refused("a pocket " + mm(width) + " wide at x = " + mm(x) + " runs off the skin",
                    "a width below " + mm(2 * hull.bottomEdge().y(x)));
        }
        double least = edgeRise + transducer.height();
        double depth = wish.depth().orElse(Math.ceil(least * 1000 - 1e-6) / 1000);
        if (depth < least - FLUSH) {
            return new Refused("at a depth of " + mm(depth) + " the face stands " + mm(least - depth)
                    + " proud of the skin at its outer edges", "a depth of "
                    + mm(Math.ceil(least * 1000) / 1000) + " or more");
        }
        PocketForm form = new PocketForm(length, width, radius, depth, depth - transducer.height(), wish.rampRatio());
        return new KeelPocketCut(hull, frame, form).outcome(edgeRise);
    }

    private static String mm(double metres) {
        return String.format(Locale.ROOT, "%.1f mm", metres * 1000);
    }

    /** Highest skin along the floor's outline above the frame's plane [m]; NaN where it leaves the skin. */
    private static double edgeRise(PocketFrame frame, PocketForm form) {
        double highest = 0;
        for (double[] place : PocketRing.floor(form)) {
            double rise = frame.rise(place[0], place[1]);
            if (!(rise <= highest)) {
                highest = rise;
            }
        }
        return highest;
    }

    private PocketOutcome outcome(double edgeRise) {
        List<double[]> edge = PocketRing.opening(form, opening);
        return rampsOffTheTable().or(this::acrossAStep).or(() -> acrossTheBottomsEdge(edge))
                .orElseGet(() -> new Built(pocket(edge, edgeRise)));
    }

    private Optional<PocketOutcome> rampsOffTheTable() {
        double fore = frame.toHull(opening.fore(0), 0, 0).getX();
        double after = frame.toHull(opening.after(0), 0, 0).getX();
        if (fore >= hull.firstSection() && after <= hull.foot()) {
            return Optional.empty();
        }
        double x = frame.origin().getX();
        double room = Math.min(x - hull.firstSection(), hull.foot() - x) - form.halfLength();
        return Optional.of(new Refused(String.format(Locale.ROOT,
                "ramps of 1:%.1f from a face %s deep run off the ends of the table", form.rampRatio(), mm(form.faceDepth())),
                String.format(Locale.ROOT, "ramps of 1:%.1f or steeper, or a site farther from the ends",
                        Math.floor(10 * room / form.faceDepth()) / 10)));
    }

    private Optional<PocketOutcome> acrossAStep() {
        double fore = frame.toHull(opening.fore(0), 0, 0).getX();
        double after = frame.toHull(opening.after(0), 0, 0).getX();
        for (Step step : hull.steps()) {
            for (double y : step.halfBreadths(0.01)) {
                if (y <= form.width() / 2 && step.x(y) > fore && step.x(y) < after) {
                    double ahead = frame.origin().getX() - (after - step.x(y));
                    return Optional.of(new Refused("the pocket and its ramps run across the step at station " + step.name()
                            + ", which stands at x = " + mm(step.x(y)), "a middle at x = " + mm(ahead) + " or farther forward"));
                }
            }
        }
        return Optional.empty();
    }

    private Optional<PocketOutcome> acrossTheBottomsEdge(List<double[]> edge) {
        for (double[] place : edge) {
            double x = frame.toHull(place[0], place[1], 0).getX();
            double room = hull.bottomEdge().y(x);
            if (!(Math.abs(place[1]) < room)) {
                return Optional.of(new Refused("the opening, " + mm(form.width())
                        + " wide, crosses the edge of the bottom at x = " + mm(x),
                        "a width below " + mm(2 * room) + " there"));
            }
        }
        return Optional.empty();
    }

    private Pocket pocket(List<double[]> edge, double edgeRise) {
        KeelDevelopment development = new KeelDevelopment(frame);
        List<double[]> outline = PocketRing.floor(form);
        List<Vector3D> onSkin = edge.stream().map(this::onSkin).toList();
        List<FlatPoint> flat = edge.stream().map(place -> development.of(place[0], place[1])).toList();
        PocketMeasures measures = new PocketMeasures(frame, form);
        return new Pocket(frame.origin(), frame.slope(), form.length(), form.width(), form.cornerRadius(),
                form.depth(), form.faceDepth(), form.depth() - edgeRise, form.rampRatio(),
                -opening.fore(0) - form.halfLength(), opening.after(0) - form.halfLength(),
                outline.stream().map(place -> frame.toHull(place[0], place[1], form.depth())).toList(),
                outline.stream().map(this::wallFoot).toList(),
                onSkin, flat,
                outline.stream().map(place -> development.of(place[0], place[1])).toList(),
                KeelDevelopment.stretch(onSkin, flat), measures.volume(), measures.area(),
                new PocketSections(frame, form).all());
    }

    private Vector3D onSkin(double[] place) {
        return frame.toHull(place[0], place[1], frame.rise(place[0], place[1]));
    }

    /** Where the wall over a place of the floor's outline ends below: on a ramp at the ends, else on the skin. */
    private Vector3D wallFoot(double[] place) {
        double rise = frame.rise(place[0], place[1]);
        boolean atEnd = form.ramped() && Math.abs(place[0]) > form.halfLength() - form.cornerRadius() - 1e-9;
        return frame.toHull(place[0], place[1], atEnd ? Math.max(rise, form.faceDepth()) : rise);
    }
}
