package org.garboard.drawing;

import java.util.ArrayList;
import java.util.List;

/** Proves that a sheet can be read: what overlaps or leaves its frame, each as a sentence. */
public final class SheetClearance {

    private SheetClearance() {
    }

    /**
     * What is wrong with a sheet's layout.
     *
     * @param frame the line that nothing may cross but the paper's own marks
     */
    public static List<String> faults(Sheet sheet, Box frame) {
        List<String> faults = new ArrayList<>();
        List<Text> texts = Flattened.of(sheet).texts();
        for (int i = 0; i < texts.size(); i++) {
            if (!frame.contains(texts.get(i).bounds())) {
                faults.add("\"" + texts.get(i).words() + "\" leaves the frame");
            }
            for (int j = i + 1; j < texts.size(); j++) {
                if (overlap(texts.get(i).corners(), texts.get(j).corners())) {
                    faults.add("\"" + texts.get(i).words() + "\" overlaps \"" + texts.get(j).words() + "\"");
                }
            }
        }
        for (int i = 0; i < sheet.views().size(); i++) {
            View view = sheet.views().get(i);
            if (!frame.contains(view.frame())) {
                faults.add("view " + view.name() + " leaves the frame");
            }
            for (View other : sheet.views().subList(i + 1, sheet.views().size())) {
                if (view.frame().overlaps(other.frame())) {
                    faults.add("view " + view.name() + " overlaps view " + other.name());
                }
            }
            view.entities().stream().filter(entity -> !view.frame().grownBy(1e-6).contains(entity.bounds()))
                    .forEach(entity -> faults.add("something leaves the view " + view.name() + ": " + entity));
        }
        return faults;
    }

    /** Two convex figures overlap unless the direction of some edge parts them. */
    static boolean overlap(List<Point> one, List<Point> other) {
        return !parted(one, other) && !parted(other, one);
    }

    private static boolean parted(List<Point> figure, List<Point> other) {
        for (int i = 0; i < figure.size(); i++) {
            Point a = figure.get(i);
            Point b = figure.get((i + 1) % figure.size());
            double nx = b.y() - a.y();
            double ny = a.x() - b.x();
            if (most(figure, nx, ny) <= -most(other, -nx, -ny) + 1e-9) {
                return true;
            }
        }
        return false;
    }

    private static double most(List<Point> figure, double nx, double ny) {
        return figure.stream().mapToDouble(point -> point.x() * nx + point.y() * ny).max().orElseThrow();
    }
}
