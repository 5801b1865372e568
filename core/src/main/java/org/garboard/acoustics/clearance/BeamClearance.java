package org.garboard.acoustics.clearance;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What stands in a beam.
 *
 * @param blockedShare of the rays, 0 to 1
 * @param nearest distance from the face to the nearest body in the beam [m]; none where it is clear
 * @param by name of that body, empty where the beam is clear
 */
public record BeamClearance(double blockedShare, OptionalDouble nearest, String by) {

    /**
     * @param range to which the beam is followed [m]
     * @param bodies everything that may stand in it; the first named wins a tie
     */
    public static BeamClearance of(RayFan fan, double range, List<? extends Body> bodies) {
        double[] reach = new double[fan.rays()];
        double[] before = new double[fan.rays()];
        Arrays.fill(reach, range);
        double nearest = range;
        String by = "";
        for (Body body : bodies) {
            System.arraycopy(reach, 0, before, 0, reach.length);
            body.shorten(fan, reach);
            for (int ray = 0; ray < reach.length; ray++) {
                if (reach[ray] < before[ray] && reach[ray] < nearest) {
                    nearest = reach[ray];
                    by = body.name();
                }
            }
        }
        int blocked = 0;
        for (double each : reach) {
            blocked += each < range ? 1 : 0;
        }
        return new BeamClearance((double) blocked / reach.length,
            blocked > 0 ? OptionalDouble.of(nearest) : OptionalDouble.empty(), by);
    }

    public boolean isClear() {
        return nearest.isEmpty();
    }
}
