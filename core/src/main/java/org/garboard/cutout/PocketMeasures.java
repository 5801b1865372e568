package org.garboard.cutout;

import org.garboard.geometry.GaussRule;

/**
 * Volume and skin area of a pocket by Gauss quadrature over its plan, in strips fore and aft;
 * exact on a plane-sided V.
 */
final class PocketMeasures {
    private static final GaussRule RULE = GaussRule.of(8);

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
        for (int i = 0; i < RULE.size(); i++) {
            strip(straight * RULE.at(i), straight * RULE.weight(i));
            double angle = Math.PI / 2 * RULE.at(i);
            strip(straight + form.cornerRadius() * Math.sin(angle),
                    form.cornerRadius() * Math.cos(angle) * Math.PI / 2 * RULE.weight(i));
        }
        volume *= 2;
        area *= 2;
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
        for (int i = 0; i < RULE.size() && to > from; i++) {
            double along = from + (to - from) * RULE.at(i);
            double element = width * (to - from) * RULE.weight(i);
            double height = level - fall * Math.max(0, Math.abs(along) - form.halfLength());
            volume += element * (height - frame.rise(along, across));
            area += element * frame.spread(along, across);
        }
    }
}
