package org.garboard.mount;

import java.util.Locale;
import org.garboard.acoustics.beam.Spacing;
import org.garboard.handling.Supports;
import org.garboard.inside.LaidInside;
import org.garboard.skin.DeadriseRule;
import org.garboard.skin.FittingRule;
import org.garboard.skin.InHullRule;
import org.garboard.skin.PlankLine;
import org.garboard.skin.PlankingRule;

/**
 * The limits of all mounts, fixed once and for every boat alike, unless a job asks for another. No published source is
 * known for any of them; each says whether it is common practice or our own choice, and why.
 */
public enum LimitName {
    FLATNESS(Limit.ofMillimetres(3,
        "our choice, because a bed of compound up to 3 mm thick holds its shape while it cures")),

    LEAN(Limit.ofDegrees(4,
        "common practice, no source: one inclined element serves a band of deadrise about 8 deg wide")),

    SLOPE(Limit.ofDegrees(5,
        "our choice, because a disc of 2.5 wavelengths tilted 5 deg loses about 1 dB out and back")),

    ROOM_TO_KEEL(Limit.ofMillimetres(50,
        "our choice, because a backing block inside needs that much landing clear of the keel")),

    ROOM_TO_CHINE(Limit.ofMillimetres(100,
        "our choice, because spray and air run along the chine")),

    ROOM_TO_KNUCKLE(Limit.ofMillimetres(50,
        "our choice, because a backing block inside needs that much landing clear of a knuckle")),

    ROOM_TO_FEATURE(Limit.ofMillimetres(50,
        "common practice, no source: flange and bedding need flat skin that far from a strake or fitting")),

    AHEAD_OF_PROPELLERS(Limit.ofMillimetres(1000,
        "common practice, no source: ahead of the propellers; 1 m is our choice, because nearer the blades are loud and"
        + " draw the water in")),

    ROOM_TO_STEP(Limit.ofMillimetres(300,
        "common practice, no source: that far ahead of a step the water is not yet disturbed by it")),

    ROOM_TO_ENDS(Limit.ofMillimetres(300,
        "our choice, because transom knees, drains and stern fittings take up that much, and the table ends there")),

    IMMERSION(Limit.ofMillimetres(100,
        "our choice, because a face nearer to the surface than 100 mm comes out of a small chop at rest")),

    DEPTH_LOST(Limit.ofMillimetres(100,
        "our choice, because ramps of 1:8 over a deeper V grow beyond 800 mm each")),

    KEEL_STRAIGHTNESS(Limit.ofMillimetres(5,
        "our choice, because floor and ramps are built straight and no deeper step than that can be faired away")),

    FACE_PROUD(Limit.ofMillimetres(0.1,
        "our choice, because a coat of paint is thicker")),

    BLOCK_GAP(Limit.ofMillimetres(10,
        "our choice, because more than that is not scribed off a sawn block without spoiling its edge")),

    FROM_PROPELLER(Limit.ofMillimetres(380,
        "common practice, no source: nearer to the propeller's axis its water is stirred and loud")),

    SUPPORT_CLEARANCE(Limit.of(Supports.CLEAR)),

    FUEL_CLEARANCE(Limit.of(LaidInside.FUEL_MARGIN)),

    WRENCH_ROOM(Limit.of(LaidInside.WRENCH)),

    STEM_BEYOND_SKIN(Limit.of(FittingRule.NUT)),

    HOLE_TO_SEAM(Limit.of(PlankingRule.clear(PlankLine.Kind.SEAM))),

    HOLE_TO_BUTT(Limit.of(PlankingRule.clear(PlankLine.Kind.BUTT))),

    HOLE_TO_FASTENINGS(Limit.of(PlankingRule.clear(PlankLine.Kind.FASTENINGS))),

    MEASURED_DEADRISE(Limit.of(DeadriseRule.DIFFERENCE)),

    SKIN_LOSS(Limit.of(InHullRule.LOSS)),

    BEHIND_STAGNATION(Limit.ofBeams(0.1,
        "our choice, because trim and load, waves and turns move the line where the water meets the bottom by about that much")),

    LAYER_THICKNESS(Limit.ofMillimetres(60,
        "our choice, set to agree with common practice: a face flush in the skin serves to about 40 to 45 ft at cruise")),

    FACE_CLEAR_OF_LAYER(Limit.ofTimes(1,
        "our choice, because most of the slow water and the bubbles in it pass below a face where it runs at 0.9 of the outer speed")),

    ECHO_LOSS(Limit.ofDecibels(6,
        "our choice, because 6 dB out and back leave seven tenths of the depth that is reached (40 log 0.71 = -6 dB)")),

    JUDGED_FROM(Limit.ofKnots(8,
        "our choice, because slower the layer is thick but quiet and nothing cavitates")),

    WAKE_LEFT(Limit.ofShare(0.05,
        "our choice: a twentieth of a wake is left where it is taken to have faded; half-angle 6 deg after Berger and White,"
        + " arXiv 2010.05323 (abstract), for turbulent wedges; for bubbles behind strakes and fittings no source is known")),

    SWEPT_DOWN(Limit.ofShare(0.05,
        "our choice, because one line in twenty of the upper water is within what the tracing of lines is good for")),

    CAVITATION_MARGIN(Limit.ofTimes(1.2,
        "our choice, because roughness, waves and a yaw of 10 deg (which takes 1.15 of a 4:1 fairing's speed) come on top of a smooth form")),

    PROPELLER_DIAMETERS(Limit.ofTimes(1.5,
        "our choice, because a propeller draws in the water of about so many diameters ahead of it, and 1 m at least")),

    BEAM_BLOCKED(Limit.ofShare(0.05,
        "our choice, because a twentieth of the face in the shade loses 0.4 dB out and 0.4 dB back (20 log 0.95)")),

    OWN_WAKE(Limit.ofMillimetres(50,
        "our choice, as much as to a strake or fitting")),

    BETWEEN_TRANSDUCERS(Limit.ofMetres(Spacing.LEAST_BETWEEN_BODIES,
        "our choice, because two holes with their backing blocks nearer than that weaken the skin and leave no room for a wrench")),

    ABOVE_LOWEST(Limit.ofMillimetres(5,
        "our choice, because she is set down on her lowest place, and paint and blocks give no more than that")),

    AIR_TRAPPED(Limit.ofMillimetres(5,
        "our choice, because a face under a deeper pocket of air hears nothing until it is gone")),

    FROM_TABS(Limit.ofMillimetres(50,
        "our choice, as much as to a strake or fitting: water runs off a tab's edge white wherever it swings to")),

    LIMBER_CLEARANCE(Limit.of(LaidInside.LIMBER));

    private final Limit own;

    LimitName(Limit own) {
        this.own = own;
    }

    /** The program's own. */
    public Limit own() {
        return own;
    }

    public static LimitName of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    /** As a job writes it: "room-to-keel". */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
