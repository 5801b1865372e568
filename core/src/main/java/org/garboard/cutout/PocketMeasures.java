package org.garboard.cutout;

/**
 * Volume and skin area of a pocket by Gauss quadrature over its plan, in strips fore and aft;
 * exact on a plane-sided V.
 */
final class PocketMeasures {
    /** Abscissae and weights of eight-point Gauss quadrature on [-1, 1] (Abramowitz and Stegun 25.4.30). */
    private static final double[] AT = {0.1834346424956498, 0.5255324099163290, 0.7966664774136267, 0.9602898564975363};
    private static final double[] WEIGHT = {0.3626837833783620, 0.3137066458778873, 0.2223810344533745,
        0.1012285362903763};

    private final PocketFrame frame;
    private final PocketForm form;
    private final PocketOpening opening;
    private double volume;
    private double area;

    PocketMeasures(PocketFrame frame, PocketForm form) {
        this.frame = frame;
        this.form = form;
        this.opening = new PocketOpening(frame, form);
        measure();
    }

    double volume() {
        return volume;
    }

    double area() {
        return area;
    }

    /** Starboard twice: straight sides first, then the corners by the angle round them. */
    private void measure() {
        double straight = form.halfWidth() - form.cornerRadius();
        for (int i = 0; i < 8; i++) {
            strip(straight * at(i), straight * weight(i));
            double angle = Math.PI / 2 * at(i);
            strip(straight + form.cornerRadius() * Math.sin(angle),
                    form.cornerRadius() * Math.cos(angle) * Math.PI / 2 * weight(i));
        }
        volume *= 2;
        area *= 2;
    }

    /** Abscissa i on [0, 1]. */
    private static double at(int i) {
        return 0.5 + 0.5 * (i < 4 ? -AT[3 - i] : AT[i - 4]);
    }

    private static double weight(int i) {
        return 0.5 * (i < 4 ? WEIGHT[3 - i] : WEIGHT[i - 4]);
    }

    private void strip(double across, double width) {
        if (width <= 0) {
            return;
        }
        double reach = form.reach(across);
        piece(across, width, -reach, reach, form.depth(), 0);
        if (form.ramped()) {
            double end = form.halfLength();
            piece(across, width, -end, -reach, form.faceDepth(), 0);
            piece(across, width, reach, end, form.faceDepth(), 0);
            piece(across, width, opening.fore(across), -end, form.faceDepth(), 1 / form.rampRatio());
            piece(across, width, end, opening.after(across), form.faceDepth(), 1 / form.rampRatio());
        }
    }

    private void piece(double across, double width, double from, double to, double level, double fall) {
        for (int i = 0; i < 8 && to > from; i++) {
            double along = from + (to - from) * at(i);
            double element = width * (to - from) * weight(i);
            double height = level - fall * Math.max(0, Math.abs(along) - form.halfLength());
            volume += element * (height - frame.rise(along, across));
            area += element * frame.spread(along, across);
        }
    }
}
