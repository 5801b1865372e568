package org.garboard.mount.water;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.garboard.craft.LaidFeature;
import org.garboard.flow.shadow.Cast;
import org.garboard.flow.shadow.Shadow;
import org.garboard.geometry.Quad;
import org.garboard.hull.Hull;
import org.garboard.mount.Bed;
import org.garboard.units.FixedDecimal;

/**
 * The wakes of all that is listed on the bottom, at those speeds at which they lie alike. Planing, the water runs straight aft, and
 * what is dry at every end of the band throws none; afloat it runs along the streamlines of the middle of the band, which are taken
 * to serve its ends too: our choice.
 */
public final class Wakes {
    private final List<WaterAtSpeed> waters;
    private final List<Shadow> shadows;
    private final List<Shadow> inDoubt;
    private final List<LaidFeature> throwers;
    private final WakeRows judged;
    private final WakeRows advisory;
    private final WakeRows doubted;
    private final List<LaidFeature> doubtful;

    private Wakes(List<WaterAtSpeed> waters, Hull hull, List<Shadow> shadows, List<LaidFeature> throwers, List<Shadow> doubted,
                  List<LaidFeature> doubtful) {
        this.waters = List.copyOf(waters);
        this.shadows = shadows;
        this.inDoubt = doubted;
        this.throwers = throwers;
        this.judged = WakeRows.judged(shadows, hull.forwardEnd(), hull.afterEnd());
        this.advisory = WakeRows.advisory(shadows, hull.forwardEnd(), hull.afterEnd());
        this.doubted = WakeRows.judged(doubted, hull.forwardEnd(), hull.afterEnd());
        this.doubtful = List.copyOf(doubtful);
    }

    /** Of a planing bottom: speeds at which the same features are wet go together. */
    static List<Wakes> planing(Hull hull, List<LaidFeature> laid, CastWakes cast, List<WaterAtSpeed> speeds) {
        if (speeds.isEmpty()) {
            return List.of();
        }
        List<Cast> casts = cast.of(laid);
        Map<List<Wet>, List<WaterAtSpeed>> alike = new LinkedHashMap<>();
        for (WaterAtSpeed water : speeds) {
            alike.computeIfAbsent(laid.stream().map(feature -> wet(feature, water)).toList(), none -> new ArrayList<>()).add(water);
        }
        return alike.entrySet().stream().map(group -> {
            List<Integer> wet = of(casts, group.getKey(), Wet.YES);
            List<Integer> perhaps = of(casts, group.getKey(), Wet.PERHAPS);
            return new Wakes(group.getValue(), hull, shadows(casts, wet), features(laid, wet), shadows(casts, perhaps), features(laid, perhaps));
        }).toList();
    }

    /** Whether water runs past a feature. */
    private enum Wet {
        YES,
        NO,
        /** At no end of the band that is known, but not all are. */
        PERHAPS
    }

    private static List<Integer> of(List<Cast> casts, List<Wet> wet, Wet which) {
        return IntStream.range(0, casts.size()).filter(i -> casts.get(i) instanceof Shadow && wet.get(i) == which).boxed().toList();
    }

    private static List<Shadow> shadows(List<Cast> casts, List<Integer> of) {
        return of.stream().map(i -> (Shadow) casts.get(i)).toList();
    }

    private static List<LaidFeature> features(List<LaidFeature> laid, List<Integer> of) {
        return of.stream().map(laid::get).toList();
    }

    private static Wet wet(LaidFeature feature, WaterAtSpeed water) {
        boolean open = !water.missing().isEmpty();
        for (int end = 0; end < water.ends(); end++) {
            for (Quad quad : feature.cover()) {
                for (int corner = 0; corner < Quad.CORNERS; corner++) {
                    double run = water.end(end).run(quad.x(corner), quad.y(corner));
                    if (run > 0) {
                        return Wet.YES;
                    }
                    open |= Double.isNaN(run);
                }
            }
        }
        return open ? Wet.PERHAPS : Wet.NO;
    }

    /** Of a hull afloat. */
    static Wakes afloat(Hull hull, List<LaidFeature> laid, CastWakes cast, List<WaterAtSpeed> waters) {
        List<Cast> casts = cast.of(laid);
        List<Integer> thrown = IntStream.range(0, laid.size()).filter(i -> casts.get(i) instanceof Shadow).boxed().toList();
        return new Wakes(waters, hull, shadows(casts, thrown), features(laid, thrown), List.of(), List.of());
    }

    /** All of them, those too of what is perhaps dry. */
    public List<Shadow> shadows() {
        return Stream.concat(shadows.stream(), inDoubt.stream()).toList();
    }

    /** Why a wake may go on where none is known; empty where all of them are. */
    Optional<String> lost() {
        return shadows.stream().map(Shadow::lost).flatMap(Optional::stream).findFirst();
    }

    /** "cruise, 24 kn; top, 28 kn". */
    String speeds() {
        return waters.stream().map(WaterAtSpeed::words).collect(Collectors.joining("; "));
    }

    /** How much is left of the strongest wake under a rectangle: 1 at what throws it, 0 outside all. */
    double left(double x, double y, double length, double width) {
        return judged.left(x, y, length, width);
    }

    /** What may or may not throw a wake that reaches the bed, or that the water there is not known at every end, a sentence; empty where all is known. */
    String doubt(Bed bed, double length, double width) {
        int thrower = doubted.thrower(bed.x(), bed.y(), length, width);
        return thrower < 0 ? waters.stream().map(water -> water.unknownAt(bed)).filter(left -> !left.isEmpty()).findFirst().orElse("") : "Whether " + doubtful.get(thrower).kind() + " \"" + doubtful.get(thrower).name()
            + "\" is wet is not known at every end of the band, and the place lies behind it.";
    }

    /** What throws the wake that reaches a rectangle, or whose advisory edge does, a sentence; empty where nothing does. */
    String told(double x, double y, double length, double width) {
        int thrower = judged.thrower(x, y, length, width);
        if (thrower >= 0) {
            return "It comes from " + named(thrower, x, y) + ".";
        }
        return Optional.of(advisory.thrower(x, y, length, width)).filter(near -> near >= 0)
            .map(near -> "It lies within 10 deg of " + named(near, x, y) + ": look at it under way.").orElse("");
    }

    private String named(int thrower, double x, double y) {
        LaidFeature feature = throwers.get(thrower);
        return feature.kind() + " \"" + feature.name() + "\", " + FixedDecimal.format(shadows.get(thrower).runTo(x, y), 1)
            + " m ahead along the water";
    }
}
