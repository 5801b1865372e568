package org.garboard.marking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.cutout.FlatPoint;
import org.garboard.cutout.Pocket;
import org.garboard.appendage.Keel;
import org.garboard.hull.Hull;
import org.garboard.hull.HullLine;
import org.garboard.hull.Step;
import org.garboard.lines.StretchedTape;
import org.garboard.lines.TapeInPlane;
import org.garboard.lines.TapeRun;
import org.garboard.marking.MarkedLength.Use;
import org.garboard.marking.MarkedLength.Way;
import org.garboard.marking.MarkingOut.Datum;
import org.garboard.offsets.HullOffsets;

/**
 * Makes the plan for a place: a mark abreast of it on the keel line, two on the keel line forward and aft of that,
 * the place itself square out from the first, and the two diagonals from the others that prove it.
 */
public final class MarkingPlan {
    /** Marks on the keel line stand at least and at most so far from the one abreast [m]: our choice, so that diagonals lie near half a right angle. */
    private static final double SHORTEST_ARM = 0.3;
    private static final double LONGEST_ARM = 1.2;
    /** Marks on the keel line keep so far clear of what is cut [m]: our choice. */
    private static final double BESIDE_CUT = 0.1;
    /** Nearer to the after end there is no room for a mark abaft of the place [m]: our choice. */
    private static final double AT_END = 0.05;
    /** Marks nearer together are one [m]: our choice, as broad as a pencil's line. */
    private static final double ONE_MARK = 0.001;

    /** The keel's after end is where offsets are measured from when it lies so near [m]: our choice, what a heel is rounded by. */
    private static final double AT_HEEL = 0.02;

    private final Hull hull;
    private final HullOffsets table;
    private final Vector3D place;
    private final double round;
    private final HullLine keel;
    private final int side;
    private final List<Mark> marks = new ArrayList<>();
    private final List<MarkedLength> lengths = new ArrayList<>();

    private MarkingPlan(Hull hull, HullOffsets table, Vector3D place, double round) {
        this.hull = hull;
        this.table = table;
        this.place = place;
        this.round = round;
        this.keel = hull.lines().get(hull.skinLine());
        this.side = place.getY() < 0 ? -1 : 1;
    }

    /**
     * The plan for a place off the centreline.
     *
     * @param round distances along the keel between marks are a whole number of this [m]
     */
    public static MarkingOut of(Hull hull, HullOffsets table, Vector3D place, double round) {
        MarkingPlan plan = new MarkingPlan(hull, table, place, round);
        boolean atEnd = hull.bottomEnd() - place.getX() < AT_END;
        Datum datum = atEnd ? plan.datumOnKeelLine() : plan.datum();
        if (atEnd) {
            plan.onAfterEnd(datum);
        } else {
            plan.offCentre(datum, "THE PLACE: centre of the hole");
        }
        return new MarkingOut(datum, plan.marks, plan.lengths);
    }

    /** The plan for a pocket athwart the keel or beside it, and the corners of its opening. */
    public static MarkingOut of(Hull hull, HullOffsets table, Pocket pocket, double round) {
        MarkingPlan plan = new MarkingPlan(hull, table, pocket.site(), round);
        boolean onKeel = pocket.site().getY() == 0;
        Datum datum = onKeel ? plan.datumOnKeelLine() : plan.datum();
        if (onKeel) {
            plan.onKeel(datum, pocket);
        } else {
            plan.opening(pocket, plan.offCentre(datum, "THE PLACE: middle of the pocket"));
        }
        return new MarkingOut(datum, plan.marks, plan.lengths);
    }

    private Optional<Step> stepAbaft() {
        return hull.steps().stream().filter(step -> step.x(0) > place.getX()).min(Comparator.comparingDouble(step -> step.x(0)));
    }

    private Datum datum() {
        if (stepAbaft().isPresent()) {
            return Datum.STEP;
        }
        if (table.ends().transom().isPresent()) {
            return Datum.TRANSOM;
        }
        return heel().isPresent() ? Datum.HEEL : Datum.END_OF_TABLE;
    }

    /** Where all tapes from the datum lie on the keel line. */
    private Datum datumOnKeelLine() {
        Datum datum = datum();
        return datum == Datum.HEEL ? Datum.END_OF_TABLE : datum;
    }

    /** The lower after corner of the keel on the place's side, where that is what the offsets are measured from. */
    private Optional<Vector3D> heel() {
        return Keel.of(table, hull).filter(keel -> table.isFromPlaceOfBoat())
            .map(keel -> keel.section(keel.to()))
            .filter(end -> Math.hypot(end.x(), end.z()) < AT_HEEL)
            .map(end -> Vector3D.of(end.x(), side * end.halfSiding(), end.z()));
    }

    private double datumX() {
        return stepAbaft().map(step -> step.x(0)).orElse(hull.foot());
    }

    private String datumWords(Datum datum) {
        return switch (datum) {
            case STEP -> "edge of the step (station " + stepAbaft().orElseThrow().name() + ") on the keel line";
            case TRANSOM -> "bottom corner of the transom on the keel line";
            case HEEL -> table.origin() + ": lower after corner of the keel, on the side of the place";
            case END_OF_TABLE -> "after end of the " + table.word() + " (station "
                + table.stations().get(table.stations().size() - 1).name() + ") on the keel line";
        };
    }

    private Vector3D onKeel(double x) {
        return Vector3D.of(x, side * keel.y(x), keel.z(x));
    }

    private Mark mark(String letter, String words, Vector3D at) {
        Mark mark = new Mark(letter, words, at);
        marks.add(mark);
        return mark;
    }

    private void alongKeel(Mark from, Mark to, Use use) {
        lengths.add(new MarkedLength(from, to, Way.ALONG_KEEL,
            TapeInPlane.along(keel, from.place().getX(), to.place().getX()), use));
    }

    private void square(Mark from, Mark to, Use use) {
        lengths.add(new MarkedLength(from, to, Way.SQUARE,
            TapeInPlane.athwart(hull, from.place().getX(), from.place().getY(), to.place().getY()), use));
    }

    private void tight(Mark from, Mark to, Use use) {
        StretchedTape.between(hull, from.place(), to.place())
            .ifPresent(tape -> lengths.add(new MarkedLength(from, to, Way.TIGHT, tape, use)));
    }

    /** What is screwed to the transom: no mark lies abaft of it. */
    private void onAfterEnd(Datum datum) {
        double x = place.getX();
        double arm = Math.rint(Math.max(SHORTEST_ARM, Math.min(LONGEST_ARM, hull.girth(x, place.getY()))) / round) * round;
        Mark a = mark("A", datumWords(datum), onKeel(datumX()));
        Mark c = mark("C", "on the keel line, forward of A", onKeel(datumX() - arm));
        Mark b = datumX() - x < ONE_MARK ? a : mark("B", "on the keel line, abreast of the place", onKeel(x));
        Mark e = mark("E", "THE PLACE: middle of the body, where the bottom ends aft", place);
        alongKeel(a, c, Use.SETS);
        if (b != a) {
            alongKeel(a, b, Use.SETS);
        }
        square(b, e, Use.SETS);
        tight(c, e, Use.CHECKS);
        if (datum == Datum.TRANSOM) {
            tight(corner("F", side), e, Use.CHECKS);
        }
    }

    /** Straight over the flat side of keel and deadwood, which hang below the keel line. */
    private void besideKeel(Mark from, Mark to, Use use) {
        double straight = from.place().distance(to.place());
        lengths.add(new MarkedLength(from, to, Way.BESIDE_KEEL, new TapeRun(List.of(from.place(), to.place()), straight, 0, from.place()), use));
    }

    /** Whole steps, not past the datum, the forward end or a step. */
    private double arm(double reach) {
        double room = Math.min(datumX() - place.getX(), place.getX() - hull.firstSection());
        for (Step step : hull.steps()) {
            room = step.x(0) <= place.getX() ? Math.min(room, place.getX() - step.x(0)) : room;
        }
        double wanted = Math.max(SHORTEST_ARM, Math.min(LONGEST_ARM, reach));
        double arm = Math.rint(wanted / round) * round;
        return arm < room ? arm : Math.floor(room * 0.8 / round) * round;
    }

    /** @return the marks on the keel line forward and aft of the place, and the place's own */
    private List<Mark> offCentre(Datum datum, String words) {
        double x = place.getX();
        double arm = arm(hull.girth(x, place.getY()));
        Mark a = mark("A", datumWords(datum), datum == Datum.HEEL ? heel().orElseThrow() : onKeel(datumX()));
        Mark b = mark("B", "on the keel line, abreast of the place", onKeel(x));
        Mark c = mark("C", "on the keel line, forward of B", onKeel(x - arm));
        Mark d = mark("D", "on the keel line, aft of B", onKeel(x + arm));
        Mark e = mark("E", words, place);
        if (datum == Datum.HEEL) {
            besideKeel(a, b, Use.SETS);
        } else {
            alongKeel(a, b, Use.SETS);
        }
        alongKeel(b, c, Use.SETS);
        alongKeel(b, d, Use.SETS);
        square(b, e, Use.SETS);
        tight(c, e, Use.CHECKS);
        tight(d, e, Use.CHECKS);
        if (datum == Datum.TRANSOM) {
            tight(corner("F", side), e, Use.CHECKS);
        }
        return List.of(c, d, e);
    }

    /** The bottom's outer corner at the transom. */
    private Mark corner(String letter, int ofSide) {
        HullLine edge = hull.bottomEdge();
        double x = edge.afterEnd();
        return mark(letter, "lower outer corner of the transom, " + (ofSide < 0 ? "port" : "starboard"),
            Vector3D.of(x, ofSide * edge.y(x), edge.z(x)));
    }

    private void onKeel(Datum datum, Pocket pocket) {
        double x = place.getX();
        // the marks outlive the cut
        double arm = arm(pocket.length() / 2 + Math.max(pocket.foreRamp(), pocket.aftRamp()) + BESIDE_CUT);
        Mark a = mark("A", datumWords(datum), onKeel(datumX()));
        Mark e = mark("E", "THE PLACE: middle of the pocket, on the keel line", place);
        Mark c = mark("C", "on the keel line, forward of E", onKeel(x - arm));
        Mark d = mark("D", "on the keel line, aft of E", onKeel(x + arm));
        alongKeel(a, e, Use.SETS);
        alongKeel(e, c, Use.SETS);
        alongKeel(e, d, Use.SETS);
        if (datum == Datum.TRANSOM) {
            tight(corner("F", 1), e, Use.CHECKS);
            tight(corner("G", -1), e, Use.CHECKS);
        }
        opening(pocket, List.of(c, d, e));
    }

    /** The opening's corners, from the marks on the keel line forward and aft of the place, and from the place. */
    private void opening(Pocket pocket, List<Mark> from) {
        double x = place.getX();
        List<Mark> corners = List.of(opening("1", "forward starboard", pocket, -1, 1), opening("2", "forward port", pocket, -1, -1),
            opening("3", "after starboard", pocket, 1, 1), opening("4", "after port", pocket, 1, -1));
        for (Mark corner : corners) {
            tight(from.get(corner.place().getX() < x ? 0 : 1), corner, Use.SETS);
            tight(from.get(2), corner, Use.SHAPE);
        }
        tight(corners.get(0), corners.get(3), Use.SHAPE);
        tight(corners.get(1), corners.get(2), Use.SHAPE);
    }

    /** The point of the opening farthest out both ways, as its cut file has it. */
    private Mark opening(String letter, String words, Pocket pocket, int aft, int starboard) {
        List<FlatPoint> flat = pocket.developedOpening();
        double along = extent(flat, FlatPoint::u);
        double across = extent(flat, FlatPoint::v);
        double middle = middle(flat, FlatPoint::u);
        int best = 0;
        for (int i = 1; i < flat.size(); i++) {
            if (out(flat.get(i), middle, along, across, aft, starboard) > out(flat.get(best), middle, along, across, aft, starboard)) {
                best = i;
            }
        }
        return mark(letter, words + " corner of the opening", pocket.opening().get(best));
    }

    private static double out(FlatPoint point, double middle, double along, double across, int aft, int starboard) {
        return aft * (point.u() - middle) / along + starboard * point.v() / across;
    }

    private static double extent(List<FlatPoint> flat, ToDoubleFunction<FlatPoint> of) {
        return flat.stream().mapToDouble(of).max().orElseThrow() - flat.stream().mapToDouble(of).min().orElseThrow();
    }

    private static double middle(List<FlatPoint> flat, ToDoubleFunction<FlatPoint> of) {
        return (flat.stream().mapToDouble(of).max().orElseThrow() + flat.stream().mapToDouble(of).min().orElseThrow()) / 2;
    }
}
