package org.garboard.drawing.flow;

import java.util.ArrayList;
import java.util.List;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Text;
import org.garboard.drawing.layout.Cluster;
import org.garboard.drawing.layout.Lettering;

/** Which line and which hatch is what. */
final class FlowLegend {
    /** Letter heights that a sample is long: a dashed line shows its kind. */
    private static final double SAMPLE = 12;

    private final double letter;
    private final List<Entity> drawn = new ArrayList<>();
    private double y;

    private FlowLegend(Lettering lettering) {
        this.letter = lettering.tables();
        drawn.add(Text.level(Layer.TEXT, "LINES AND SHADOWS", new Point(0, 0), lettering.headings(), Anchor.LEFT));
        y = -1.5 * lettering.headings() - letter;
    }

    static Cluster of(FlowPicture picture, Lettering lettering) {
        FlowLegend legend = new FlowLegend(lettering);
        for (PlanCurve.Kind kind : PlanCurve.Kind.values()) {
            if (picture.curves().stream().anyMatch(curve -> curve.kind() == kind)) {
                legend.line(kind.layer(), kind.words());
            }
        }
        for (PlanArea.Kind kind : PlanArea.Kind.values()) {
            if (picture.areas().stream().anyMatch(area -> area.kind() == kind)) {
                legend.swatch(kind.strokes(), kind.words());
            }
        }
        if (!picture.shadows().isEmpty()) {
            legend.swatch(ShadowsBelow.WAKE, "wake of what is named");
            legend.line(ShadowsBelow.ADVISORY_LINE, "advisory edge of a wake");
        }
        if (picture.shadows().stream().anyMatch(shadow -> !shadow.ahead().isEmpty())) {
            legend.swatch(ShadowsBelow.AHEAD, "water that a propeller draws in");
        }
        return Cluster.of(legend.drawn);
    }

    private void line(Layer layer, String words) {
        drawn.add(new Line(layer, new Point(0, y + letter), new Point(SAMPLE * letter, y + letter)));
        words(words);
    }

    private void swatch(Strokes strokes, String words) {
        List<Point> ring = List.of(new Point(0, y), new Point(SAMPLE * letter, y), new Point(SAMPLE * letter, y + 2 * letter), new Point(0, y + 2 * letter));
        drawn.addAll(strokes.over(List.of(ring)));
        words(words);
    }

    private void words(String words) {
        drawn.add(Text.level(Layer.TEXT, words, new Point((SAMPLE + 1) * letter, y + letter / 2), letter, Anchor.LEFT));
        y -= 2.8 * letter;
    }
}
