package org.garboard.takeoff;

import org.garboard.units.Angle;
import org.garboard.units.FixedDecimal;

/**
 * How the boat stood when she was measured.
 *
 * @param trim positive with the bow up
 * @param heel positive to starboard, starboard side down
 */
public record AsBlocked(Angle trim, Angle heel) {

    /** "trim 1.24 deg bow up, heel 0.53 deg to starboard". */
    public String words() {
        return "trim " + FixedDecimal.format(Math.abs(trim.degrees()), 2) + " deg " + (trim.radians() < 0 ? "bow down" : "bow up")
            + ", heel " + FixedDecimal.format(Math.abs(heel.degrees()), 2) + " deg to " + (heel.radians() < 0 ? "port" : "starboard");
    }
}
