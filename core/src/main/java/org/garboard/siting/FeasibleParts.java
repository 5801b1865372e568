package org.garboard.siting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.geometry.LevelSet;
import org.garboard.geometry.Ring;

/** The connected parts of a grid on which a mount's demands are met, largest first. */
final class FeasibleParts {
    /** Outlines keep to this [m] (our choice, because at 1:10 it is a hundredth of a millimetre on paper). */
    private static final double OUTLINE_TOLERANCE = 0.0001;

    private FeasibleParts() {
    }

    /** Parts of the bottom, each bounded where the governing check is just met. */
    static List<FeasiblePart> ofBottom(BottomGrid grid, Suitability suitability) {
        LevelSet level = new LevelSet(suitability.shortfalls(), grid.columns(), grid.step());
        List<int[]> nodes = new ArrayList<>();
        List<FeasiblePart> parts = new ArrayList<>();
        int[] counts = new int[level.parts()];
        for (int node = 0; node < suitability.size(); node++) {
            if (level.part(node) >= 0) {
                counts[level.part(node)]++;
            }
        }
        for (int count : counts) {
            nodes.add(new int[count]);
        }
        for (int node = suitability.size() - 1; node >= 0; node--) {
            int part = level.part(node);
            if (part >= 0) {
                nodes.get(part)[--counts[part]] = node;
            }
        }
        for (int p = 0; p < level.parts(); p++) {
            List<Ring> rings = level.rings(p);
            if (!rings.isEmpty() && rings.get(0).area() > 0) {
                parts.add(new FeasiblePart(region(rings, grid.originX()), nodes.get(p)));
            }
        }
        return largestFirst(parts);
    }

    private static Region region(List<Ring> rings, double originX) {
        double area = 0;
        List<List<PlanPoint>> outlines = new ArrayList<>();
        for (Ring ring : rings) {
            Ring drawn = ring.simplified(OUTLINE_TOLERANCE);
            area += drawn.area();
            List<PlanPoint> outline = new ArrayList<>();
            for (Vector2D point : drawn.points()) {
                outline.add(new PlanPoint(originX + point.getX(), point.getY()));
            }
            outlines.add(outline);
        }
        return new Region(outlines.get(0), outlines.subList(1, outlines.size()), area);
    }

    /** Stretches of the keel line or of a line so far aside [m], drawn as wide as the footprint. */
    static List<FeasiblePart> ofKeelLine(BottomGrid grid, Suitability suitability, double aside, double width) {
        List<FeasiblePart> parts = new ArrayList<>();
        int row = 0;
        while (row < grid.rows()) {
            if (!suitability.serves(row)) {
                row++;
                continue;
            }
            int end = row;
            while (end + 1 < grid.rows() && suitability.serves(end + 1)) {
                end++;
            }
            double from = grid.x(row) - (row == 0 ? 0 : grid.step() * beyond(suitability, row, row - 1));
            double to = grid.x(end) + (end + 1 == grid.rows() ? 0 : grid.step() * beyond(suitability, end, end + 1));
            if (to > from) {
                int[] nodes = new int[end - row + 1];
                for (int i = 0; i < nodes.length; i++) {
                    nodes[i] = row + i;
                }
                parts.add(new FeasiblePart(strip(from, to, aside, width), nodes));
            }
            row = end + 1;
        }
        return largestFirst(parts);
    }

    /** Stretches of the transom's lower edge, drawn as far abaft of it as the body reaches. */
    static List<FeasiblePart> ofTransom(BottomGrid grid, Suitability suitability, double edge, double length) {
        List<FeasiblePart> parts = new ArrayList<>();
        int column = 0;
        while (column < suitability.size()) {
            if (!suitability.serves(column)) {
                column++;
                continue;
            }
            int end = column;
            while (end + 1 < suitability.size() && suitability.serves(end + 1)) {
                end++;
            }
            double from = grid.y(column) - (column == 0 ? 0 : grid.step() * beyond(suitability, column, column - 1));
            double to = grid.y(end) + (end + 1 == suitability.size() ? 0 : grid.step() * beyond(suitability, end, end + 1));
            if (to > from) {
                int[] nodes = new int[end - column + 1];
                for (int j = 0; j < nodes.length; j++) {
                    nodes[j] = column + j;
                }
                parts.add(new FeasiblePart(new Region(List.of(new PlanPoint(edge, from), new PlanPoint(edge + length, from),
                    new PlanPoint(edge + length, to), new PlanPoint(edge, to)), List.of(), (to - from) * length), nodes));
            }
            column = end + 1;
        }
        return largestFirst(parts);
    }

    /** Share of a step from a node that serves to where the shortfall, taken as straight, crosses zero. */
    private static double beyond(Suitability suitability, int serves, int fails) {
        double in = suitability.shortfall(serves);
        return in / (in - suitability.shortfall(fails));
    }

    private static Region strip(double from, double to, double aside, double width) {
        double half = width / 2;
        return new Region(List.of(new PlanPoint(from, aside - half), new PlanPoint(to, aside - half),
            new PlanPoint(to, aside + half), new PlanPoint(from, aside + half)), List.of(), (to - from) * width);
    }

    /** Equal areas stay in the order of their foremost node. */
    private static List<FeasiblePart> largestFirst(List<FeasiblePart> parts) {
        return parts.stream()
            .sorted(Comparator.comparingDouble((FeasiblePart part) -> part.region().area()).reversed()).toList();
    }
}
