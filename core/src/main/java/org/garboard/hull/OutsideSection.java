package org.garboard.hull;

import java.util.List;
import java.util.Optional;
import org.garboard.units.FixedDecimal;
import org.garboard.units.LengthUnit;

/**
 * The outside in one plane x: where each named line of the outside lies, and the panels between them.
 *
 * <p>The keel line is where the bottom's face meets the centreline plane; a chine, where the faces on its
 * two sides meet, each drawn on or cut short; the sheer, where the thickness set square at the inside sheer
 * ends.
 */
final class OutsideSection {
    private static final int LOOKS_PER_CELL = 4;

    private final List<OutsideFace> faces;
    private final double x;
    private final double[] lower;
    private final double[] upper;
    private final double[][] lines;
    private final Optional<String> trouble;

    OutsideSection(List<OutsideFace> faces, double x) {
        this.faces = faces;
        this.x = x;
        this.lower = new double[faces.size()];
        this.upper = new double[faces.size()];
        this.lines = new double[faces.size() + 1][2];
        this.trouble = solve();
    }

    /** Why there is no outside here; empty where there is. */
    Optional<String> trouble() {
        return trouble;
    }

    /** Half-breadth and height of a named line [m], counted from the keel. */
    double[] line(int line) {
        return lines[line];
    }

    /**
     * The point at a share of a panel from its lower outside line, 0, to its upper, 1.
     *
     * @param yz filled with half-breadth and height [m]
     * @return false where the outside folds
     */
    boolean at(int panel, double share, double[] yz) {
        if (share == 0 || share == 1) {
            System.arraycopy(lines[panel + (int) share], 0, yz, 0, 2);
            return true;
        }
        return faces.get(panel).at(x, lower[panel] + share * (upper[panel] - lower[panel]), yz);
    }

    private Optional<String> solve() {
        int last = faces.size() - 1;
        Optional<String> found = keel();
        for (int p = 0; found.isEmpty() && p < last; p++) {
            found = knuckle(p);
        }
        upper[last] = 1;
        if (found.isEmpty() && !faces.get(last).at(x, 1, lines[last + 1])) {
            found = Optional.of(hollow(last));
        }
        for (int p = 0; found.isEmpty() && p <= last; p++) {
            found = fold(p);
        }
        return found;
    }

    private Optional<String> keel() {
        OutsideFace bottom = faces.get(0);
        FaceMeeting meeting = new FaceMeeting(x, thickest());
        if (meeting.ofCentreline(bottom)) {
            lower[0] = meeting.above();
            lines[0] = new double[] {meeting.y(), meeting.z()};
            return Optional.empty();
        }
        return Optional.of(!bottom.at(x, 0, lines[0]) ? hollow(0) : "at " + bottom.panel().lower().name()
            + " the bottom is so steep that its outsides meet only far below; give the half-siding of the keel");
    }

    private Optional<String> knuckle(int panel) {
        FaceMeeting meeting = new FaceMeeting(x, thickest());
        if (meeting.ofFaces(faces.get(panel), faces.get(panel + 1))) {
            upper[panel] = meeting.below();
            lower[panel + 1] = meeting.above();
            lines[panel + 1] = new double[] {meeting.y(), meeting.z()};
            return Optional.empty();
        }
        if (!faces.get(panel).at(x, 1, lines[panel + 1])) {
            return Optional.of(hollow(panel));
        }
        if (!faces.get(panel + 1).at(x, 0, lines[panel + 1])) {
            return Optional.of(hollow(panel + 1));
        }
        return Optional.of("at " + faces.get(panel).panel().upper().name() + " the outsides of " + words(panel) + " ("
            + millimetres(panel) + ") and of " + words(panel + 1) + " (" + millimetres(panel + 1)
            + ") do not meet; they lie nearly in one there: give both the same thickness");
    }

    private Optional<String> fold(int panel) {
        if (!(upper[panel] > lower[panel])) {
            return Optional.of(words(panel) + " is narrower there than its skin is thick; correct the one or the other");
        }
        double[] point = new double[2];
        int looks = LOOKS_PER_CELL * faces.get(panel).panel().knotsAcross().cells();
        boolean smooth = true;
        for (int i = 1; smooth && i < looks; i++) {
            smooth = at(panel, (double) i / looks, point);
        }
        return smooth ? Optional.empty() : Optional.of(hollow(panel));
    }

    /** What is said of a panel where {@link #at} finds nothing. */
    String hollow(int panel) {
        return words(panel) + " is hollowed there more sharply than its skin is thick; correct the one or the other";
    }

    private String words(int panel) {
        return faces.get(panel).panel().name().words();
    }

    private String millimetres(int panel) {
        return FixedDecimal.format(faces.get(panel).thickness() / LengthUnit.MILLIMETRE.metres(), 1) + " mm thick";
    }

    private double thickest() {
        return faces.stream().mapToDouble(OutsideFace::thickness).max().orElse(0);
    }
}
