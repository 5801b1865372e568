package org.garboard.acoustics.beam;

import org.garboard.units.Angle;
import org.garboard.units.FixedDecimal;

/**
 * Where a beam looks, against the plumb line.
 *
 * @param outboard how far it leans athwartships, away from the keel; negative towards it
 * @param aft how far it leans fore and aft; negative ahead
 */
public record BeamTilt(Angle outboard, Angle aft) {
    /** Less than this is plumb to people [deg]. */
    private static final double PLUMB_DEG = 0.05;

    /**
     * The beam of an element that leans in its housing, square to the skin but for that.
     *
     * <p>The skin's normal points down and outboard by the deadrise, and aft by the slope where the bottom rises
     * aft. The element leans from it towards the keel, about a line along the bottom. A boat with her bow up by
     * the trim turns everything below her ahead by as much.
     *
     * @param deadrise of the skin, positive where it rises outboard
     * @param slope of the skin along a buttock, positive where it rises aft
     * @param inclination of the element, towards the keel; away from it negative
     * @param trim bow up: 0 at rest where she floats as the table has her, else the running trim
     */
    public static BeamTilt of(Angle deadrise, Angle slope, Angle inclination, Angle trim) {
        double rise = Math.tan(deadrise.radians());
        double run = Math.tan(slope.radians());
        double size = Math.sqrt(1 + rise * rise + run * run);
        double nx = run / size;
        double ny = rise / size;
        double nz = -1 / size;
        // the athwartships tangent that points to the keel: along the skin, square to the normal, level fore and aft
        double level = Math.hypot(ny, nz);
        double cos = Math.cos(inclination.radians());
        double sin = Math.sin(inclination.radians());
        double x = nx * cos;
        double y = ny * cos + nz / level * sin;
        double z = nz * cos - ny / level * sin;
        double up = Math.sin(trim.radians());
        double along = Math.cos(trim.radians());
        double aheadOrAft = x * along + z * up;
        double down = z * along - x * up;
        return new BeamTilt(Angle.ofRadians(Math.atan2(y, -down)), Angle.ofRadians(Math.atan2(aheadOrAft, -down)));
    }

    /** From the plumb line, both ways together. */
    public Angle total() {
        return Angle.ofRadians(Math.atan(Math.hypot(Math.tan(outboard.radians()), Math.tan(aft.radians()))));
    }

    /** "looks 8.0 deg towards the keel and 3.0 deg ahead". */
    public String words() {
        String athwart = leaning(outboard, "away from the keel", "towards the keel");
        String along = leaning(aft, "aft", "ahead");
        if (athwart.isEmpty() && along.isEmpty()) {
            return "looks straight down";
        }
        return "looks " + (athwart.isEmpty() ? along : along.isEmpty() ? athwart : athwart + " and " + along);
    }

    private static String leaning(Angle angle, String positive, String negative) {
        return Math.abs(angle.degrees()) < PLUMB_DEG ? ""
            : FixedDecimal.format(Math.abs(angle.degrees()), 1) + " deg " + (angle.radians() > 0 ? positive : negative);
    }
}
