package org.garboard.mount.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.garboard.craft.LaidFeature;
import org.garboard.flow.attitude.AtSpeed;
import org.garboard.flow.attitude.Attitude;
import org.garboard.flow.attitude.PlaningHull;
import org.garboard.flow.doublebody.DoubleBody;
import org.garboard.flow.doublebody.HullFlow;
import org.garboard.flow.doublebody.MeshWish;
import org.garboard.flow.doublebody.Stern;
import org.garboard.flow.shadow.AlongBottom;
import org.garboard.flow.shadow.AlongStreams;
import org.garboard.flow.streams.HullStreams;
import org.garboard.flow.streams.SweepDown;
import org.garboard.flow.underway.PlaningWater;
import org.garboard.flow.water.Water;
import org.garboard.hull.Hull;
import org.garboard.units.Angle;

/**
 * How one boat runs at each of her speeds, and the streamlines along her afloat: what is the same whatever goes into her bottom, and
 * dear to work out.
 */
public final class RunningWater {
    /** Where nothing is told of her running. */
    public static final RunningWater UNTOLD = new RunningWater(null, List.of(), List.of());
    /** Depth of the upper water at the bow against the hull's draught: the larger end of 0.05 to 0.15, our choice. */
    private static final double UPPER = 0.15;

    private final Hull hull;
    private final List<WaterAtSpeed> speeds;
    private final List<Attitude.Floats> afloat;
    private Traced traced;
    private CastWakes planing;

    /**
     * @param cast wakes along the streamlines
     * @param untraced why there are no streamlines; empty where there are
     */
    private record Traced(Optional<HullStreams> streams, Optional<CastWakes> cast, String untraced) {
    }

    private RunningWater(Hull hull, List<WaterAtSpeed> speeds, List<Attitude.Floats> afloat) {
        this.hull = hull;
        this.speeds = speeds;
        this.afloat = afloat;
    }

    /** @param profile every speed, slowest first */
    public static RunningWater of(Hull hull, Water water, List<AtSpeed> profile) {
        return new RunningWater(hull, profile.stream().map(at -> WaterAtSpeed.of(hull, water, at)).toList(),
            profile.stream().flatMap(at -> floats(at).stream()).toList());
    }

    /** At the middle of the band, or at the first end that is known. */
    private static Optional<Attitude.Floats> floats(AtSpeed at) {
        List<Attitude> all = new ArrayList<>(List.of(at.middle()));
        at.ends().forEach(end -> all.add(end.attitude()));
        return all.stream().filter(Attitude.Floats.class::isInstance).map(Attitude.Floats.class::cast).findFirst();
    }

    /** Slowest first; none where nothing is told of her running. */
    public List<WaterAtSpeed> speeds() {
        return speeds;
    }

    /** With what is on the bottom. */
    public BottomWater over(List<LaidFeature> laid) {
        if (speeds.isEmpty()) {
            return BottomWater.UNTOLD;
        }
        List<WaterAtSpeed> fast = speeds.stream().filter(each -> !each.isUnknown() && !each.floats()).toList();
        List<Wakes> wakes = new ArrayList<>(laid.isEmpty() ? List.of() : Wakes.planing(hull, laid, onAPlane(), fast));
        boolean neverPlanes = PlaningHull.unfit(hull).isPresent() || speeds.stream().allMatch(WaterAtSpeed::floats);
        List<WaterAtSpeed> floating = speeds.stream().filter(WaterAtSpeed::floats).toList();
        String words = floating.stream().map(WaterAtSpeed::words).collect(Collectors.joining("; "));
        if (floating.isEmpty() || laid.isEmpty() && !neverPlanes) {
            return new BottomWater(speeds, wakes, "", Optional.empty());
        }
        Traced along = traced();
        if (along.streams().isEmpty()) {
            return new BottomWater(speeds, wakes, "Not worked out, at " + words + ": " + along.untraced() + ".", Optional.empty());
        }
        HullStreams streams = along.streams().get();
        Optional<String> lost = Optional.empty();
        if (!laid.isEmpty()) {
            wakes.add(0, Wakes.afloat(hull, laid, along.cast().orElseThrow(), floating));
            lost = wakes.get(0).lost();
        }
        return new BottomWater(speeds, wakes, lost.map(why -> "Not worked out, at " + words + ": " + why + ".").orElse(""), neverPlanes ? Optional.of(SweepDown.of(streams, UPPER * fastest().draught())) : Optional.empty());
    }

    private Attitude.Floats fastest() {
        return afloat.get(afloat.size() - 1);
    }

    private synchronized CastWakes onAPlane() {
        if (planing == null) {
            planing = new CastWakes(hull, new AlongBottom(hull, Angle.ofDegrees(0)), PlaningWater.OUTBOARD);
        }
        return planing;
    }

    /** Of the fastest speed afloat; the others float alike. */
    private synchronized Traced traced() {
        if (traced == null) {
            DoubleBody body = DoubleBody.past(hull, fastest().afloat().hull().water(), MeshWish.atMost(MeshWish.USUAL_PANELS, Stern.STRAIGHT_RUN));
            traced = body instanceof HullFlow flow ? traced(new HullStreams(flow))
                : new Traced(Optional.empty(), Optional.empty(), ((DoubleBody.None) body).reason());
        }
        return traced;
    }

    private Traced traced(HullStreams streams) {
        return new Traced(Optional.of(streams), Optional.of(new CastWakes(hull, new AlongStreams(streams), 1)), "");
    }
}
