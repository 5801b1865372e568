package org.garboard.offsets;

import java.util.List;

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

    /** By rising x. */
    List<Station> stations();

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

    /** What the file is called in a sentence: "table of offsets". */
    String kindOfSource();

    /** What a reader of a sheet must know of where the points come from; whole sentences. */
    List<String> remarks();
}
