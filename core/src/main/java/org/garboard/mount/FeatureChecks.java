package org.garboard.mount;

import org.garboard.units.FixedDecimal;

/** What every mount asks of the strakes and fittings around it. */
public final class FeatureChecks {

    private static final String AHEAD = "ahead of the propellers";
    private static final String ROOM = "room to strakes and fittings";

    private FeatureChecks() {
    }

    /** Held to what job or table tell is there. */
    public static Demand room(Limits limits) {
        return Demand.atLeast(ROOM, limits.of(LimitName.ROOM_TO_FEATURE), Bed::roomToFeature,
            "No strake or fitting that is told is near.",
            "A strake or fitting is too near, or lies under the footprint.");
    }

    /**
     * Asked where propellers are told.
     *
     * @param diameter of the largest of them [m]
     * @param lacking which of them are not told, a sentence; may be empty
     */
    public static Demand aheadOfPropellers(Limits limits, double diameter, String lacking) {
        Limit least = limits.of(LimitName.AHEAD_OF_PROPELLERS);
        Limit times = limits.of(LimitName.PROPELLER_DIAMETERS);
        Limit limit = times.value() * diameter <= least.value() ? least
            : Limit.ofMetres(times.value() * diameter, FixedDecimal.format(times.value(), 1) + " diameters of the largest: " + times.source());
        return Demand.atLeast(AHEAD, limit, Bed::aheadOfPropellers,
            "The place lies well ahead of the propellers.",
            "The place lies beside or behind the propellers, or close ahead of them.").leavingOut(bed -> lacking);
    }

    /**
     * Where she has propellers under the bottom and none is told.
     *
     * @param lacking a sentence
     */
    public static Check aheadOfUnlisted(String lacking) {
        return new Check(AHEAD, Check.Sense.KNOWN_ONLY, Double.NaN, Double.NaN, "", Double.NaN, Verdict.NOT_KNOWN,
            "common practice, no source", lacking);
    }

    /** Whether it is answered by the nearest strake or fitting. */
    public static boolean isRoom(Demand demand) {
        return demand.name().equals(ROOM);
    }

    /** Where the job does not list what is on the bottom. */
    public static Check notListed() {
        return OpenQuestion.FEATURES.check();
    }
}
