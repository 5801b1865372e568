package org.garboard.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.hull.Hull;
import org.garboard.hull.SkinRun;

/** The skin of one section, walked outward from where girth begins: past the edge of the bottom and up the topsides. */
final class SectionWalk {
    private static final int HALVINGS = 60;
    /** A girth may be beyond the sheer by so much [m]: half of what a tape is read to. */
    private static final double READING = 0.0005;

    private final Hull hull;
    private final double x;
    private final List<SkinRun> runs = new ArrayList<>();
    private final List<Double> starts = new ArrayList<>();
    private double whole;

    SectionWalk(Hull hull, double x) {
        this.hull = hull;
        this.x = x;
        SkinRun before = null;
        for (SkinRun run : hull.runs(x)) {
            if (panel(run) >= hull.skinLine()) {
                whole += before == null ? 0 : before.gapTo(run);
                runs.add(run);
                starts.add(whole);
                whole += run.girthTo(run.to());
                before = run;
            }
        }
    }

    boolean isEmpty() {
        return runs.isEmpty();
    }

    /** Girth of the whole section, from keel line to sheer [m]. */
    double whole() {
        return whole;
    }

    /** Girth at which the bottom ends [m]; all of it on a hull without chine. */
    double bottom() {
        double bottom = 0;
        for (int i = 0; i < runs.size(); i++) {
            if (face(runs.get(i)) == Spot.Face.BOTTOM) {
                bottom = starts.get(i) + runs.get(i).girthTo(runs.get(i).to());
            }
        }
        return bottom;
    }

    /** The place at a girth; none beyond the sheer. On the face of a step the edge before it answers. */
    Optional<Spot> at(double girth) {
        if (isEmpty() || girth < 0 || girth > whole + READING) {
            return Optional.empty();
        }
        int i = runs.size() - 1;
        while (i > 0 && starts.get(i) > girth) {
            i--;
        }
        SkinRun run = runs.get(i);
        double low = run.from();
        double high = run.to();
        for (int half = 0; half < HALVINGS; half++) {
            double middle = 0.5 * (low + high);
            if (starts.get(i) + run.girthTo(middle) < girth) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Optional.of(new Spot(face(run), Vector3D.of(x, run.y(high), run.z(high)), starts.get(i) + run.girthTo(high)));
    }

    /** On a hull without chine all the skin below the sheer is bottom. */
    private Spot.Face face(SkinRun run) {
        int edge = hull.lines().indexOf(hull.bottomEdge());
        return panel(run) < edge ? Spot.Face.BOTTOM : Spot.Face.TOPSIDES;
    }

    private int panel(SkinRun run) {
        return hull.panels().indexOf(run.panel()) % hull.panelsAcross();
    }
}
