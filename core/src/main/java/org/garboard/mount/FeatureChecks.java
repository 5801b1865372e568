package org.garboard.mount;

/** What every mount asks of the strakes and fittings around it. */
public final class FeatureChecks {

    /** Held to what job or table tell is there. */
    public static final Demand ROOM = Demand.atLeast("room to strakes and fittings", Limits.ROOM_TO_FEATURE,
        Bed::roomToFeature,
        "No strake or fitting that is told is near.",
        "A strake or fitting is too near, or lies under the footprint.");

    /** Asked where propellers are told. */
    public static final Demand AHEAD_OF_PROPELLERS = Demand.atLeast("ahead of the propellers", Limits.AHEAD_OF_PROPELLERS,
        Bed::aheadOfPropellers,
        "The place lies well ahead of the propellers.",
        "The place lies beside or behind the propellers, or close ahead of them.");

    private FeatureChecks() {
    }

    /** Where the job does not list what is on the bottom. */
    public static Check notListed() {
        return OpenQuestion.FEATURES.check();
    }
}
