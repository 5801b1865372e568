package org.garboard.offsets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * What a hull is drawn from: points of its skin at stations, between named lines. A table of offsets as it was
 * printed is one; points taken off a boat in the yard are another.
 */
public interface HullOffsets {
    /** The boat, as the heading names it. */
    String title();

    /** The surface that the points lie on. */
    SkinSurface surface();

    /** The smallest step of the readings [m]. */
    double leastCount();

    /** By rising x; two at one x are the forward and the after face of a step across the bottom. */
    List<Station> stations();

    /** Where its lengths end, as far as they do not end square across at their stations. */
    default Ends ends() {
        return Ends.SQUARE;
    }

    /** Whether a station is the after face of a step: it stands where the one before it does. */
    default boolean isAfterFace(int station) {
        return station > 0 && stations().get(station).x() == stations().get(station - 1).x();
    }

    /**
     * x at which the skin of a station is asked [m]: that of the after face of a step is the skin next abaft
     * of it, for at the step itself the forward face answers.
     */
    default double skinAt(int station) {
        double x = stations().get(station).x();
        return isAfterFace(station) ? Math.nextUp(x) : x;
    }

    /** The stations where their skin is asked, see {@link #skinAt}. */
    default List<Station> skinStations() {
        return IntStream.range(0, stations().size())
            .mapToObj(i -> new Station(stations().get(i).name(), skinAt(i))).toList();
    }

    /** The hull's lengths from forward aft, each with its own stations: one more than there are steps. */
    default List<StationRun> lengths() {
        List<StationRun> lengths = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= stations().size(); i++) {
            if (i == stations().size() || isAfterFace(i)) {
                lengths.add(new StationRun(from, i));
                from = i;
            }
        }
        return lengths;
    }

    /** The offsets of some of the stations, square at their ends; of all of them, the same. */
    HullOffsets part(StationRun run);

    /**
     * The skin from the keel outward.
     *
     * @throws IllegalArgumentException if the offsets have faults that their checks would have named
     */
    List<PanelOffsets> panels();

    /** What the named lines are that bound the panels, from the keel outward: one more than there are panels. */
    List<LineKind> kinds();

    /** Which way a point of a panel was read. */
    Reading reading(SectionPoint point);

    /** Heights of waterlines, or distances of buttocks, at which the skin was read all along [m]; rising in no order. */
    List<Double> levels(LineKind kind);

    /** Where x is measured from: "station 0", or whichever stands there. */
    String origin();

    /** Whether x is measured from a place that is found on the boat, not on a drawing alone. */
    default boolean isFromPlaceOfBoat() {
        return false;
    }

    /** What the file is called on a sheet: "table", "take-off". */
    String word();

    /** What the file is called in a title block: "Table of offsets", "Take-off". */
    String document();

    /** What a sheet's figures come from, to follow "Figures come from". */
    String comesFrom();

    /** What a place is that the surface does not reach, to precede "the skin": "off", "not measured there: it is off". */
    String beyond();

    /** Ends of the surface at which the boat goes on: nothing is known of her beyond. */
    Set<OpenEnd> openEnds();

    /** What a reader of a sheet must know of where the points come from; whole sentences. */
    List<String> remarks();

    /** The keel below the skin, if it gives one. */
    default Optional<KeelRows> keelBelow() {
        return Optional.empty();
    }

    /** Lifting strakes that it gives. */
    default List<StrakeEdges> strakes() {
        return List.of();
    }
}
