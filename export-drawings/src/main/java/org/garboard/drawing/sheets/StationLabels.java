package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.LetterWidths;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Polyline;
import org.garboard.drawing.Text;
import org.garboard.drawing.layout.Spread;

/**
 * Stations named below a base line at y = 0: level in one or two rows where they stand far enough
 * apart, upright where they do not.
 */
public final class StationLabels {

    private static final double TICK = 2;

    /**
     * One station.
     *
     * @param at distance along the base line [mm]
     * @param words its name and its distance
     */
    public record Label(double at, String words) {
    }

    private final List<Label> labels;
    private final double height;
    private final List<Entity> drawn = new ArrayList<>();

    private StationLabels(List<Label> labels, double height) {
        this.labels = labels.stream().sorted(Comparator.comparingDouble(Label::at)).toList();
        this.height = height;
    }

    public static List<Entity> of(List<Label> labels, double height) {
        StationLabels stations = new StationLabels(labels, height);
        if (stations.clearOfNeighbours(1, 1)) {
            stations.level(1);
        } else if (stations.clearOfNeighbours(2, 1) && stations.clearOfNeighbours(1, 0.5)) {
            stations.level(2);
        } else {
            stations.upright();
        }
        return stations.drawn;
    }

    /** Whether each label keeps a share of its extent clear of the station so many places on. */
    private boolean clearOfNeighbours(int places, double share) {
        for (int i = 0; i + places < labels.size(); i++) {
            Label one = labels.get(i);
            Label other = labels.get(i + places);
            double extent = Math.max(extent(one), extent(other)) * share;
            if (other.at() - one.at() < extent + 0.4 * height) {
                return false;
            }
        }
        return true;
    }

    private double extent(Label label) {
        return LetterWidths.extent(label.words(), height);
    }

    private void level(int rows) {
        for (int i = 0; i < labels.size(); i++) {
            Label label = labels.get(i);
            double drop = TICK + (i % rows) * 1.5 * height;
            drawn.add(new Line(Layer.GRID, new Point(label.at(), 0), new Point(label.at(), -drop)));
            drawn.add(Text.level(Layer.TEXT, label.words(), new Point(label.at(), -drop - 1.35 * height), height,
                    Anchor.MIDDLE));
        }
    }

    private void upright() {
        double[] spread = Spread.apart(labels.stream().mapToDouble(Label::at).toArray(), 1.5 * height);
        double turn = -TICK - 1.5 * height;
        for (int i = 0; i < labels.size(); i++) {
            double at = labels.get(i).at();
            drawn.add(Polyline.open(Layer.GRID, List.of(new Point(at, 0), new Point(at, -TICK), new Point(spread[i], turn))));
            drawn.add(new Text(Layer.TEXT, labels.get(i).words(), new Point(spread[i] + height / 2, turn - 1),
                    height, Anchor.RIGHT, 90));
        }
    }
}
