package org.garboard.drawing.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Text;

/** Samples of lines and hatches, each with what it stands for, row by row under a heading. */
public final class Legend {
    private final double letter;
    private final double sample;
    private final List<Entity> drawn = new ArrayList<>();
    private double y;

    /** @param sample how many letter heights a sample is long: a dashed line wants more than a hatch to show its kind */
    public Legend(String heading, Lettering lettering, double sample) {
        this.letter = lettering.tables();
        this.sample = sample * letter;
        drawn.add(Text.level(Layer.TEXT, heading, new Point(0, 0), lettering.headings(), Anchor.LEFT));
        y = -1.5 * lettering.headings() - letter;
    }

    public void line(Layer layer, String words) {
        drawn.add(new Line(layer, new Point(0, y + letter), new Point(sample, y + letter)));
        words(words);
    }

    /** @param over what is drawn over a ring */
    public void swatch(Function<List<Point>, List<Entity>> over, String words) {
        drawn.addAll(over.apply(List.of(new Point(0, y), new Point(sample, y), new Point(sample, y + 2 * letter), new Point(0, y + 2 * letter))));
        words(words);
    }

    private void words(String words) {
        drawn.add(Text.level(Layer.TEXT, words, new Point(sample + letter, y + letter / 2), letter, Anchor.LEFT));
        y -= 2.8 * letter;
    }

    public Cluster cluster() {
        return Cluster.of(drawn);
    }
}
