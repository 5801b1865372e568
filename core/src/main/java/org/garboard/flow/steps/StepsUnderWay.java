package org.garboard.flow.steps;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.flow.planing.Stream;
import org.garboard.flow.shadow.PlanRegion;
import org.garboard.flow.steps.StepWake.Place;
import org.garboard.geometry.Ring;
import org.garboard.hull.Hull;
import org.garboard.hull.Step;
import org.garboard.units.Angle;

/** Goes over the steps of a hull from forward aft: where the water leaves each, where it comes back, and what is left. */
public final class StepsUnderWay {
    /** Nothing is sited until so many beams abaft of where the water comes back: our choice, the contours being from memory. */
    private static final double MARGIN = 1;
    private static final double APART = 0.05;
    private static final String WORTH = "advisory: contours from memory, no published value to hold them to";
    private static final String DRY = "the surface ahead of it is not known to be wet at its edge";

    private final Hull hull;
    private final Stream stream;
    private final Angle trim;
    private final List<AirBehind> air = new ArrayList<>();
    private final List<PlanRegion> clean = new ArrayList<>();

    /** Of one surface between steps. */
    private record Surface(double beam, double slope, double trim, double deadrise) {
    }

    /**
     * @param trim of the base line
     */
    public StepsUnderWay(Hull hull, Stream stream, Angle trim) {
        this.hull = hull;
        this.stream = stream;
        this.trim = trim;
    }

    /** @param wettedKeel of the surface ahead of the first step, its chines wet [m] */
    public void behind(double wettedKeel) {
        Optional<Double> wet = Optional.of(wettedKeel);
        for (int i = 0; i < hull.steps().size(); i++) {
            double start = i == 0 ? hull.firstSection() : hull.steps().get(i - 1).x(0);
            Step step = hull.steps().get(i);
            wet = wet.isPresent() ? behind(step, surface(start, step), wet.get(), end(i)) : dry(step, end(i), DRY);
        }
    }

    /** @param reason why it is not known how the surface ahead of the first step is wet */
    public void behindUnknown(String reason) {
        for (int i = 0; i < hull.steps().size(); i++) {
            dry(hull.steps().get(i), end(i), i == 0 ? reason : DRY);
        }
    }

    /** Where the surface abaft of a step ends [m]. */
    private double end(int step) {
        return step + 1 < hull.steps().size() ? hull.steps().get(step + 1).face().least() : hull.bottomEnd();
    }

    public List<AirBehind> air() {
        return List.copyOf(air);
    }

    public List<PlanRegion> clean() {
        return List.copyOf(clean);
    }

    /** The keel's slope over the last beam ahead of the step, or as much of it as there is. */
    private Surface surface(double start, Step step) {
        double x = step.face().least();
        double half = hull.bottomEdge().y(x);
        double chord = Math.min(2 * half, x - start) * 0.999;
        double slope = (hull.keel().z(x) - hull.keel().z(x - chord)) / chord;
        double deadrise = Math.toDegrees(Math.atan2(hull.bottomEdge().z(x) - hull.keel().z(x), half));
        return new Surface(2 * half, slope, trim.degrees() - Math.toDegrees(Math.atan(slope)), deadrise);
    }

    /** The wetted keel that the next step has ahead of it [m]; empty where that surface is dry or not known to be wet. */
    private Optional<Double> behind(Step step, Surface surface, double wettedKeel, double end) {
        double b = surface.beam();
        StepWake wake = new StepWake(stream.speed() / Math.sqrt(stream.gravity() * b), surface.trim(), surface.deadrise(), wettedKeel / b);
        StepWake.Return centre = meets(wake, Place.CENTRELINE, step, surface, 0, end);
        StepWake.Return quarter = meets(wake, Place.QUARTER_BEAM, step, surface, b / 4, end);
        if (!(centre instanceof StepWake.After atCentre)) {
            return dry(step, end, ((StepWake.Unknown) centre).reason());
        }
        if (!(quarter instanceof StepWake.After atQuarter)) {
            return dry(step, end, ((StepWake.Unknown) quarter).reason());
        }
        double aft = atCentre.beams() * b;
        double aftAtQuarter = atQuarter.beams() * b;
        lay(step, end, b, aft, aftAtQuarter);
        double back = Math.max(step.x(0) + aft, step.x(b / 4) + aftAtQuarter);
        return back < end ? Optional.of(end - back) : Optional.empty();
    }

    private StepWake.Return meets(StepWake wake, Place place, Step step, Surface surface, double y, double end) {
        double from = step.x(y);
        double high = step.height(y);
        if (!(high >= 0) || !(end > from)) {
            return new StepWake.Unknown("the step does not reach there");
        }
        double to = from + 0.999 * (end - from);
        double slope = (hull.height(to, y) - step.upper(y)) / (to - from);
        return slope == slope ? wake.meets(place, high / surface.beam(), slope - surface.slope())
            : new StepWake.Unknown("the bottom abaft of the step is narrower than half its beam");
    }

    private Optional<Double> dry(Step step, double end, String why) {
        List<Vector2D> outline = new ArrayList<>();
        for (double y : step.halfBreadths(APART)) {
            outline.add(Vector2D.of(step.x(y), y));
        }
        outline.add(Vector2D.of(end, hull.bottomEdge().y(end)));
        outline.add(Vector2D.of(end, 0));
        air.add(new AirBehind(step.name(), Optional.empty(), Optional.empty(), "where the water comes back is not known: " + why,
            new PlanRegion(new Ring(outline), List.of())));
        return Optional.empty();
    }

    private void lay(Step step, double end, double b, double aft, double aftAtQuarter) {
        double centre = Math.min(end, step.x(0) + aft + MARGIN * b);
        double quarter = Math.min(end, step.x(b / 4) + aftAtQuarter + MARGIN * b);
        List<Vector2D> outline = new ArrayList<>();
        for (double y : step.halfBreadths(APART)) {
            outline.add(Vector2D.of(step.x(y), y));
        }
        outline.add(Vector2D.of(end, hull.bottomEdge().y(end)));
        outline.add(Vector2D.of(end, b / 4));
        if (quarter < end) {
            outline.add(Vector2D.of(quarter, b / 4));
        }
        outline.add(Vector2D.of(centre, 0));
        air.add(new AirBehind(step.name(), Optional.of(aft), Optional.of(aftAtQuarter), WORTH, new PlanRegion(new Ring(outline), List.of())));
        if (centre < end || quarter < end) {
            List<Vector2D> left = new ArrayList<>(List.of(Vector2D.of(centre, 0)));
            left.add(Vector2D.of(quarter, b / 4));
            if (quarter < end) {
                left.add(Vector2D.of(end, b / 4));
            }
            if (centre < end) {
                left.add(Vector2D.of(end, 0));
            }
            clean.add(new PlanRegion(new Ring(left), List.of()));
        }
    }
}
