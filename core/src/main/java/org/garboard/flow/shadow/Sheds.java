package org.garboard.flow.shadow;

import org.garboard.units.Angle;

/** How a feature's wake spreads and how long it lasts. Widths and lengths are our choice where no source is named. */
public enum Sheds {
    /** Flush with the skin or nearly: growth is capped, or one fitting 5 m ahead would rule out half a bottom; and it fades. */
    FLUSH("flush fitting", 0.15),
    /** Stands out of the skin. */
    PROUD("fitting that stands out", Double.POSITIVE_INFINITY),
    /** Lies along the flow: water beside it is clean, its wake spreads from its after end; what crosses it is not clean. */
    STRAKE("strake", Double.POSITIVE_INFINITY),
    STEP("step", Double.POSITIVE_INFINITY),
    TUNNEL("thruster tunnel", Double.POSITIVE_INFINITY),
    /** Throws one behind and, as it draws water in, one ahead. */
    PROPELLER("propeller", Double.POSITIVE_INFINITY),
    /** Nothing of it is in the water. */
    NOTHING("fitting inside the skin", 0),
    /** Aft of the transom: only its wake. */
    OUTBOARD_PROPELLER("outboard's propeller", Double.POSITIVE_INFINITY);

    /** Half-angle of a wake: Berger and White; see the package. */
    public static final Angle LIKELY = Angle.ofDegrees(6);
    /** Half-angle shown beside it as advice, never capped: the outer edge of Schubauer and Klebanoff's wedge. */
    public static final Angle ADVISORY = Angle.ofDegrees(10);
    /** A fitting that stands out no more than this is flush [m]: our choice. */
    public static final double FLUSH_HEIGHT = 0.03;
    /**
     * A flush fitting's wake is traced over so many of its widths, where what is missing of the speed in the wake of a
     * small body, which falls with the distance to the power -2/3 (from memory), is about a twentieth; 5 m at least.
     */
    private static final double FADING_WIDTHS = 100;
    private static final double LEAST_FADING = 5;

    private final String words;
    private final double cap;

    Sheds(String words, double cap) {
        this.words = words;
        this.cap = cap;
    }

    public String words() {
        return words;
    }

    /** How much a wake may grow to either side [m]; infinite where there is no limit. */
    public double cap() {
        return cap;
    }

    /** Over which length the wake of a feature so wide fades [m]; infinite where it carries air and does not. */
    public double fading(double width) {
        return this == FLUSH ? Math.max(LEAST_FADING, FADING_WIDTHS * width) : Double.POSITIVE_INFINITY;
    }
}
