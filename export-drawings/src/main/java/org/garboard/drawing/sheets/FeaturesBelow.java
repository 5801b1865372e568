package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.garboard.craft.LaidFeature;
import org.garboard.craft.Sides;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Balloon;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Point;
import org.garboard.drawing.Polyline;
import org.garboard.drawing.Text;
import org.garboard.drawing.layout.NameColumn;
import org.garboard.drawing.layout.Spread;
import org.garboard.flow.shadow.Shedder;
import org.garboard.geometry.Quad;

/**
 * Strakes and fittings seen from below, and their names in a column ahead of the bow: with lines to a few of them,
 * or where there are many, or there is no room ahead, with letters in balloons below the port side.
 */
public final class FeaturesBelow {
    /** More lines than that cannot be told apart; our choice. */
    private static final int MOST_LINES = 3;
    private static final int LETTERS = 26;
    /** Rows tried one under another: our choice. */
    private static final int MOST_LOWER = 8;

    /** Where the names stand. */
    enum Names { AHEAD, BELOW }

    private final HullOnPaper paper;
    private final double lettering;
    private final List<Entity> shown = new ArrayList<>();
    private final List<String> list = new ArrayList<>();
    private final Map<Shedder, String> called = new HashMap<>();
    private final double[] down;
    private double afterEnd;
    private double lowest;

    private FeaturesBelow(HullOnPaper paper, double lettering, double halfBeam, double[] down) {
        this.down = down;
        this.paper = paper;
        this.lettering = lettering;
        this.lowest = -halfBeam;
    }

    /**
     * @param lettering height of the names [mm]
     * @param halfBeam of the hull on paper [mm]
     * @param down where lines of dimensions run down from the plan, by rising distance [mm]
     */
    static FeaturesBelow of(List<LaidFeature> features, HullOnPaper paper, double lettering, double halfBeam, double[] down, Names names) {
        FeaturesBelow below = new FeaturesBelow(paper, lettering, halfBeam, down);
        features.forEach(below::draw);
        if (names == Names.AHEAD && features.size() <= MOST_LINES) {
            below.lines(features);
        } else {
            below.letters(features);
            if (names == Names.AHEAD) {
                below.shown.addAll(below.listed(paper.length() + 2, (2.6 + 1.5 * (features.size() - 1)) * lettering));
                below.list.clear();
            }
        }
        return below;
    }

    /** The letters and their names that stand nowhere yet, the first line's foot at a place, the others under it. */
    List<Entity> listed(double left, double first) {
        List<Entity> lines = new ArrayList<>();
        for (String line : list) {
            lines.add(Text.level(Layer.TEXT, line, new Point(left, first - 1.5 * lettering * lines.size()), lettering, Anchor.LEFT));
        }
        return lines;
    }

    /** How the view names a feature: by its letter, or with few of them by its name. */
    String called(Shedder feature) {
        return called.getOrDefault(feature, feature.name());
    }

    List<Entity> shown() {
        return shown;
    }

    /** How far features and their balloons reach beyond the after end of the table, to the left [mm], 0 or less. */
    double afterEnd() {
        return afterEnd;
    }

    /** What stands lowest of hull and balloons [mm]. */
    double lowest() {
        return lowest;
    }

    private void draw(LaidFeature feature) {
        for (Polyline outline : outlines(feature, paper, Layer.FORM)) {
            shown.add(outline);
            afterEnd = Math.min(afterEnd, outline.bounds().left());
        }
    }

    /** What a feature covers, on each side where it is. */
    public static List<Polyline> outlines(LaidFeature feature, HullOnPaper paper, Layer layer) {
        List<Polyline> outlines = new ArrayList<>();
        for (int side = -1; side <= 1; side += 2) {
            if (feature.sides().meets(side < 0 ? Sides.PORT : Sides.STARBOARD)) {
                outlines.add(Polyline.closed(layer, outline(feature, side, paper)));
            }
        }
        return outlines;
    }

    private void lines(List<LaidFeature> features) {
        List<NameColumn.Name> names = new ArrayList<>();
        for (LaidFeature feature : features) {
            Point end = outline(feature, feature.sides() == Sides.PORT ? -1 : 1).stream()
                .max(Comparator.comparingDouble(Point::x)).orElseThrow();
            names.add(new NameColumn.Name(words(feature), end));
        }
        // the arrow forward and its word stand below the column
        shown.addAll(NameColumn.rightOf(paper.length() + 2, 1.8 * lettering, names, lettering));
    }

    /** Balloons from aft forward, each below its feature as nearly as may be, so low that no line to one passes over another. */
    private void letters(List<LaidFeature> features) {
        double radius = Balloon.radius(lettering);
        List<LaidFeature> fromAft = new ArrayList<>(features);
        fromAft.sort(Comparator.comparingDouble(feature -> target(feature).x()));
        List<Point> targets = fromAft.stream().map(this::target).toList();
        double[] spread = besideLines(Spread.apart(targets.stream().mapToDouble(Point::x).toArray(), 2 * radius + 1), radius);
        double row = lowest - radius - 3;
        for (int lower = 0; lower < MOST_LOWER && crossed(spread, row, targets, radius); lower++) {
            row -= radius;
        }
        for (int i = 0; i < spread.length; i++) {
            shown.add(new Balloon(new Point(spread[i], row), letter(i), lettering, List.of(targets.get(i))));
            list.add(letter(i) + "  " + words(fromAft.get(i)));
            called.put(Shedder.of(fromAft.get(i)), letter(i));
        }
        // words beside the after end keep clear of the lines to these
        afterEnd = Arrays.stream(spread).reduce(afterEnd, Math::min);
        lowest = features.isEmpty() ? lowest : row - radius;
    }

    /** The same moved on, where need be, past what runs down beside the plan: a balloon stands on no such line. */
    private double[] besideLines(double[] spread, double radius) {
        double[] moved = spread.clone();
        for (int i = 0; i < moved.length; i++) {
            moved[i] = i > 0 ? Math.max(moved[i], moved[i - 1] + 2 * radius + 1) : moved[i];
            for (double line : down) {
                if (Math.abs(moved[i] - line) < radius + 0.6) {
                    moved[i] = line + radius + 0.6;
                }
            }
        }
        return moved;
    }

    private Point target(LaidFeature feature) {
        double middle = middle(feature);
        return outline(feature, feature.sides() == Sides.STARBOARD ? 1 : -1).stream()
            .min(Comparator.comparingDouble(point -> Math.abs(point.x() - middle))).orElseThrow();
    }

    /** Whether a line to one balloon passes over another. */
    private static boolean crossed(double[] at, double row, List<Point> targets, double radius) {
        for (int i = 0; i < at.length; i++) {
            Point from = new Point(at[i], row);
            Point to = targets.get(i);
            for (int j = 0; j < at.length; j++) {
                double along = ((at[j] - from.x()) * (to.x() - from.x())) / Math.pow(from.distanceTo(to), 2);
                Point nearest = new Point(from.x() + along * (to.x() - from.x()), from.y() + along * (to.y() - from.y()));
                if (i != j && along > 0 && along < 1 && nearest.distanceTo(new Point(at[j], row)) < radius) {
                    return true;
                }
            }
        }
        return false;
    }

    /** a to z, then aa, ab … */
    private static String letter(int i) {
        String last = String.valueOf((char) ('a' + i % LETTERS));
        return i < LETTERS ? last : letter(i / LETTERS - 1) + last;
    }

    private static String words(LaidFeature feature) {
        boolean onCentre = feature.sides() == Sides.BOTH && feature.cover().stream().anyMatch(quad -> Math.min(quad.y(0), quad.y(1)) < 0);
        return feature.name() + " (" + (onCentre ? "on the centreline" : feature.sides().words()) + ")";
    }

    /** Middle of its length on paper. */
    private double middle(LaidFeature feature) {
        List<Point> outline = outline(feature, 1);
        double left = outline.stream().mapToDouble(Point::x).min().orElse(0);
        double right = outline.stream().mapToDouble(Point::x).max().orElse(0);
        return (left + right) / 2;
    }

    private List<Point> outline(LaidFeature feature, int side) {
        return outline(feature, side, paper);
    }

    /** Along the inboard corners from end to end, and back along the outboard ones. */
    private static List<Point> outline(LaidFeature feature, int side, HullOnPaper paper) {
        List<Point> out = new ArrayList<>();
        List<Point> back = new ArrayList<>();
        for (Quad quad : feature.cover()) {
            add(out, paper.below(quad.x(0), side * quad.y(0)));
            add(out, paper.below(quad.x(1), side * quad.y(1)));
            add(back, paper.below(quad.x(3), side * quad.y(3)));
            add(back, paper.below(quad.x(2), side * quad.y(2)));
        }
        for (int i = back.size() - 1; i >= 0; i--) {
            out.add(back.get(i));
        }
        return out;
    }

    private static void add(List<Point> points, Point point) {
        if (points.isEmpty() || points.get(points.size() - 1).distanceTo(point) > 1e-6) {
            points.add(point);
        }
    }
}
