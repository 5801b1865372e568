package org.garboard.mount;

/** What every mount asks of the strakes and fittings around it. */
public final class FeatureChecks {

    /** Held to what job or table tell is there. */
    public static final Demand ROOM = Demand.atLeast("room to strakes and fittings", Limits.ROOM_TO_FEATURE,
        Bed::roomToFeature,
        "No strake or fitting that is told is near.",
        "A strake or fitting is too near, or lies under the footprint.");

    private FeatureChecks() {
    }

    /** Where the job does not list what is on the bottom. */
    public static Check notListed() {
        return OpenQuestion.FEATURES.check();
    }
}
