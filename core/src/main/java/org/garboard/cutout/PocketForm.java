package org.garboard.cutout;

/**
 * The shape asked for in the pocket's own frame, symmetrical fore and aft and side to side; metres.
 *
 * @param length of the floor fore and aft
 * @param width of the floor athwartships
 * @param cornerRadius of the floor's outline
 * @param depth of the floor
 * @param faceDepth of the transducer's face, from which the ramps start
 * @param rampRatio length of a ramp to its height; 0 for none
 */
record PocketForm(double length, double width, double cornerRadius, double depth, double faceDepth,
                  double rampRatio) {

    boolean ramped() {
        return rampRatio > 0;
    }

    double halfLength() {
        return length / 2;
    }

    double halfWidth() {
        return width / 2;
    }

    /** Half the floor's length at a distance from its centreline: less within the corners. */
    double reach(double across) {
        double into = Math.abs(across) - (halfWidth() - cornerRadius);
        if (into <= 0) {
            return halfLength();
        }
        return halfLength() - cornerRadius + Math.sqrt(Math.max(0, cornerRadius * cornerRadius - into * into));
    }

    /** Level of a ramp beyond the floor's ends. */
    double rampLevel(double along) {
        return faceDepth - Math.max(0, Math.abs(along) - halfLength()) / rampRatio;
    }
}
