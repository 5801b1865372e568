package org.garboard.mount;

/**
 * The limits of all mounts, fixed once and for every boat alike. No published source is known for
 * any of them; each says whether it is common practice or our own choice, and why.
 */
final class Limits {

    static final Limit FLATNESS = Limit.ofMillimetres(3,
        "our choice, because a bed of compound up to 3 mm thick holds its shape while it cures");

    static final Limit LEAN = Limit.ofDegrees(4,
        "common practice, no source: one inclined element serves a band of deadrise about 8 deg wide");

    static final Limit SLOPE = Limit.ofDegrees(5,
        "our choice, because a disc of 2.5 wavelengths tilted 5 deg loses about 1 dB out and back");

    static final Limit ROOM_TO_KEEL = Limit.ofMillimetres(50,
        "our choice, because a backing block inside needs that much landing clear of the keel");

    static final Limit ROOM_TO_CHINE = Limit.ofMillimetres(100,
        "our choice, because spray and air run along the chine");

    static final Limit ROOM_TO_KNUCKLE = Limit.ofMillimetres(50,
        "our choice, because a backing block inside needs that much landing clear of a knuckle");

    static final Limit ROOM_TO_FEATURE = Limit.ofMillimetres(50,
        "common practice, no source: flange and bedding need flat skin that far from a strake or fitting");

    static final Limit AHEAD_OF_PROPELLERS = Limit.ofMillimetres(1000,
        "common practice, no source: ahead of the propellers; 1 m is our choice, because nearer the blades are loud and"
            + " draw the water in");

    static final Limit ROOM_TO_STEP = Limit.ofMillimetres(300,
        "common practice, no source: that far ahead of a step the water is not yet disturbed by it");

    static final Limit ROOM_TO_ENDS = Limit.ofMillimetres(300,
        "our choice, because transom knees, drains and stern fittings take up that much, and the table ends there");

    static final Limit IMMERSION = Limit.ofMillimetres(100,
        "our choice, because a face nearer to the surface than 100 mm comes out of a small chop at rest");

    static final Limit DEPTH_LOST = Limit.ofMillimetres(100,
        "our choice, because ramps of 1:8 over a deeper V grow beyond 800 mm each");

    static final Limit KEEL_STRAIGHTNESS = Limit.ofMillimetres(5,
        "our choice, because floor and ramps are built straight and no deeper step than that can be faired away");

    static final Limit FACE_PROUD = Limit.ofMillimetres(0.1,
        "our choice, because a coat of paint is thicker");

    private Limits() {
    }

    /** The walls are to hold the bedding over a quarter of the body's height [m]. */
    static Limit wallHeight(double bodyHeight) {
        return Limit.ofMetres(bodyHeight / 4,
            "our choice, because bedding that grips less than a quarter of the body does not hold it sideways");
    }
}
