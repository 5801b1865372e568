package org.garboard.drawing.lines;

import java.util.List;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Text;
import org.garboard.drawing.layout.Cluster;
import org.garboard.drawing.layout.Lettering;
import org.garboard.drawing.sheets.Figures;
import org.garboard.job.DrawingWish.Units;
import org.garboard.lines.Comb;
import org.garboard.units.FeetInches;
import org.garboard.units.FixedDecimal;

/**
 * How long a tooth stands for a curvature.
 *
 * @param curvature that 10 mm on paper stand for [1/m], a round number
 */
record CombScale(double curvature) {
    private static final double BAR = 10;
    /** The longest tooth [mm on paper]: our choice, seen well and not in the way. */
    private static final double LONGEST = 40;
    /** A line flatter than this is straight on any boat [1/m]: its radius is ten kilometres. */
    private static final double FLATTEST = 1e-4;

    static CombScale of(List<Comb> combs) {
        double largest = combs.stream().mapToDouble(Comb::largest).max().orElse(0);
        return new CombScale(roundUp(Math.max(FLATTEST, largest * BAR / LONGEST)));
    }

    /** The next of 1, 2, 5, 10 … at or above. */
    private static double roundUp(double value) {
        double power = Math.pow(10, Math.floor(Math.log10(value)));
        for (double step : new double[] {1, 2, 5}) {
            if (step * power >= value * (1 - 1e-9)) {
                return step * power;
            }
        }
        return 10 * power;
    }

    /** Length of a tooth on paper [mm]. */
    double paper(double toothCurvature) {
        return BAR * toothCurvature / curvature;
    }

    /** A bar of 10 mm and what it stands for. */
    Cluster legend(Lettering lettering, Figures figures) {
        double h = lettering.tables();
        double y = -1.5 * lettering.headings() - h;
        List<Entity> drawn = List.of(
                Text.level(Layer.TEXT, "SCALE OF THE COMB", new Point(0, 0), lettering.headings(), Anchor.LEFT),
                new Line(Layer.DIM, new Point(0, y), new Point(BAR, y)),
                new Line(Layer.DIM, new Point(0, y - 1), new Point(0, y + 1)),
                new Line(Layer.DIM, new Point(BAR, y - 1), new Point(BAR, y + 1)),
                Text.level(Layer.TEXT, "tooth of 10 mm on paper: curvature " + words(curvature, figures),
                        new Point(BAR + 2, y - h / 2), h, Anchor.LEFT));
        return Cluster.of(drawn);
    }

    /** "0.02 1/m, radius 50 m"; with feet where the sheet has them. */
    static String words(double curvature, Figures figures) {
        double radius = 1 / curvature;
        String metres = "radius " + significant(radius) + " m";
        return significant(curvature) + " 1/m, " + (figures.units() == Units.MILLIMETRES ? metres
                : metres + " (" + FeetInches.toEighth(radius) + ")");
    }

    /** Three figures, closing noughts left out. */
    private static String significant(double value) {
        int places = Math.max(0, 2 - (int) Math.floor(Math.log10(value)));
        String text = FixedDecimal.format(value, Math.min(places, 9));
        if (text.indexOf('.') < 0) {
            return text;
        }
        int end = text.length();
        while (text.charAt(end - 1) == '0') {
            end--;
        }
        return text.substring(0, text.charAt(end - 1) == '.' ? end - 1 : end);
    }
}
