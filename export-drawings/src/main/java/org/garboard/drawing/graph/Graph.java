package org.garboard.drawing.graph;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.LetterWidths;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Polyline;
import org.garboard.drawing.Text;
import org.garboard.drawing.layout.Lettering;

/** Curves over a net of round figures; each is named beside the net where it ends. */
public final class Graph {
    private final double width;
    private final double height;
    private final double letter;
    private final Axis along;
    private final Axis upright;
    private final List<Entity> shown = new ArrayList<>();
    private final List<Named> names = new ArrayList<>();

    /** A curve's name and where the curve ends. */
    private record Named(String name, Point end) {
    }

    private Graph(double width, double height, Lettering lettering, double most, List<Curve> curves) {
        this.width = width;
        this.height = height;
        this.letter = lettering.figures();
        this.along = Axis.over(0, most);
        DoubleSummaryStatistics values = curves.stream().flatMap(curve -> curve.readings().stream()).filter(Reading::isKnown)
                .mapToDouble(Reading::value).summaryStatistics();
        this.upright = Axis.over(Math.min(0, values.getMin()), Math.max(0, values.getMax()));
    }

    /**
     * The graph, its lower left corner at (0, 0).
     *
     * @param width of the net [mm]
     * @param height of the net [mm]
     * @param most largest figure along, more than 0
     * @param upright readings that are marked by a line from below to above
     */
    public static List<Entity> of(double width, double height, Lettering lettering, double most, List<Curve> curves, double... upright) {
        Graph graph = new Graph(width, height, lettering, most, curves);
        graph.net();
        curves.forEach(graph::curve);
        graph.names();
        for (double along : upright) {
            double x = width * graph.along.share(along);
            graph.shown.add(new Line(Layer.CUT, new Point(x, 0), new Point(x, height)));
        }
        return graph.shown;
    }

    private void net() {
        for (int i = 0; i <= along.steps(); i++) {
            double x = width * i / along.steps();
            shown.add(new Line(Layer.GRID, new Point(x, 0), new Point(x, height)));
            shown.add(Text.level(Layer.TEXT, along.figure(i), new Point(x, -2 * letter), letter, Anchor.MIDDLE));
        }
        for (int i = 0; i <= upright.steps(); i++) {
            double y = height * i / upright.steps();
            shown.add(new Line(Layer.GRID, new Point(0, y), new Point(width, y)));
            shown.add(Text.level(Layer.TEXT, upright.figure(i), new Point(-letter, y - letter / 2), letter, Anchor.RIGHT));
        }
    }

    private void curve(Curve curve) {
        List<Point> piece = new ArrayList<>();
        Point last = null;
        for (Reading each : curve.readings()) {
            if (each.isKnown()) {
                last = new Point(width * along.share(each.along()), height * upright.share(each.value()));
                piece.add(last);
            } else {
                draw(curve.layer(), piece);
                piece.clear();
            }
        }
        draw(curve.layer(), piece);
        if (last != null && !curve.label().isEmpty()) {
            names.add(new Named(curve.label(), last));
        }
    }

    private void draw(Layer layer, List<Point> points) {
        if (points.size() > 1) {
            shown.add(Polyline.open(layer, points));
        }
    }

    /** On the side where the curve ends, the lower curve's name below; to the left beyond the figures. */
    private void names() {
        double left = -2 * letter - upright.figures().mapToDouble(figure -> LetterWidths.extent(figure, letter)).max().orElse(0);
        double[] clear = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        names.sort(Comparator.comparingDouble(named -> named.end().y()));
        for (Named named : names) {
            int side = named.end().x() < width / 2 ? 0 : 1;
            double y = Math.max(named.end().y() - letter / 2, clear[side]);
            clear[side] = y + 1.5 * letter;
            shown.add(Text.level(Layer.TEXT, named.name(), new Point(side == 0 ? left : width + letter, y), letter, side == 0 ? Anchor.RIGHT : Anchor.LEFT));
        }
    }
}
