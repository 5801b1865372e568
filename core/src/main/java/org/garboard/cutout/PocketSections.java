package org.garboard.cutout;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** The pocket cut along the keel and across it, for drawing. */
final class PocketSections {
    /** How much skin is drawn beyond the cut [m]; our choice, enough to see which way the skin runs. */
    private static final double BEYOND = 0.12;
    private static final int PIECES = 48;

    private final PocketFrame frame;
    private final PocketForm form;
    private final PocketOpening opening;

    PocketSections(PocketFrame frame, PocketForm form) {
        this.frame = frame;
        this.form = form;
        this.opening = new PocketOpening(frame, form);
    }

    /** The long section, then A forward, B amidships of the pocket, C aft. */
    List<PocketSection> all() {
        double fore = form.ramped() ? 0.5 * (opening.fore(0) - form.halfLength()) : -form.length() / 4;
        double aft = form.ramped() ? 0.5 * (opening.after(0) + form.halfLength()) : form.length() / 4;
        return List.of(along(), across("A", fore), across("B", 0), across("C", aft));
    }

    private PocketSection along() {
        double fore = opening.fore(0);
        double aft = opening.after(0);
        List<Vector3D> skin = new ArrayList<>();
        for (int i = 0; i <= PIECES; i++) {
            double at = fore - BEYOND + (aft - fore + 2 * BEYOND) * i / PIECES;
            addSkin(skin, at, 0);
        }
        List<Vector3D> cut = new ArrayList<>();
        double end = form.halfLength();
        addSkin(cut, fore, 0);
        if (form.ramped()) {
            cut.add(frame.toHull(-end, 0, form.faceDepth()));
        }
        cut.add(frame.toHull(-end, 0, form.depth()));
        cut.add(frame.toHull(end, 0, form.depth()));
        if (form.ramped()) {
            cut.add(frame.toHull(end, 0, form.faceDepth()));
        }
        addSkin(cut, aft, 0);
        return new PocketSection("LONG", 0, skin, cut);
    }

    private PocketSection across(String name, double along) {
        double half = form.halfWidth();
        List<Vector3D> skin = new ArrayList<>();
        for (int i = 0; i <= PIECES; i++) {
            addSkin(skin, along, (half + BEYOND) * (2.0 * i / PIECES - 1));
        }
        double level = Math.abs(along) <= form.reach(0) ? form.depth() : form.rampLevel(along);
        double edge = edge(along, level);
        List<Vector3D> cut = new ArrayList<>();
        for (int side = -1; side <= 1; side += 2) {
            Vector3D onSkin = frame.toHull(along, side * edge, frame.rise(along, edge));
            Vector3D corner = frame.toHull(along, side * edge, level);
            cut.add(side < 0 ? onSkin : corner);
            cut.add(side < 0 ? corner : onSkin);
        }
        return new PocketSection(name, along, skin, cut);
    }

    /** How far out the cut goes: to the wall, or to where its level meets the skin. */
    private double edge(double along, double level) {
        double inside = 0;
        double outside = form.halfWidth();
        if (level > frame.rise(along, outside)) {
            return outside;
        }
        for (int i = 0; i < 50; i++) {
            double middle = 0.5 * (inside + outside);
            if (level > frame.rise(along, middle)) {
                inside = middle;
            } else {
                outside = middle;
            }
        }
        return 0.5 * (inside + outside);
    }

    private void addSkin(List<Vector3D> points, double along, double across) {
        double rise = frame.rise(along, across);
        if (rise == rise) {
            points.add(frame.toHull(along, across, rise));
        }
    }
}
