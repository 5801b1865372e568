package org.garboard.drawing.template;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Box;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Text;
import org.garboard.drawing.layout.ClearPlace;

/**
 * A line that is named beside it on every tile that it crosses, so that none is taken for another.
 *
 * @param words "CUT HERE"
 * @param ring closed, the first corner not repeated
 */
public record NamedLine(String words, List<Point> ring) {
    private static final double LETTERS = 2.5;
    /** Gap between line and letters, and how far apart places for them are tried [mm]: our choice. */
    private static final double GAP = 1.5;
    private static final double APART = 8;

    public NamedLine {
        ring = List.copyOf(ring);
    }

    /**
     * The name in the template's frame, clear of what is drawn on the tile; none where the line does not cross the tile or
     * nothing is clear.
     *
     * @param window of the template that the tile shows
     */
    Optional<Entity> on(Box window, List<Entity> drawn) {
        List<Line> there = stretches(window);
        List<Text> places = new ArrayList<>();
        there.forEach(stretch -> along(stretch, places));
        there.forEach(stretch -> beside(stretch, places));
        List<List<Entity>> inside = places.stream().filter(text -> window.contains(text.bounds())).<List<Entity>>map(List::of).toList();
        return ClearPlace.clearAmong(inside, drawn).map(text -> text.get(0));
    }

    /** Short pieces of the line on a tile, those nearest to its middle first. */
    private List<Line> stretches(Box window) {
        List<Line> there = new ArrayList<>();
        double run = APART;
        for (int i = 0; i < ring.size(); i++) {
            Point from = ring.get(i);
            Point to = ring.get((i + 1) % ring.size());
            int pieces = Math.max(1, (int) Math.ceil(from.distanceTo(to) / APART));
            for (int k = 0; k < pieces; k++) {
                Optional<Line> part = Clipped.of(new Line(Layer.CUT, between(from, to, (double) k / pieces), between(from, to, (k + 1.0) / pieces)), window);
                run += from.distanceTo(to) / pieces;
                if (part.isPresent() && run >= APART) {
                    there.add(part.get());
                    run = 0;
                }
            }
        }
        there.sort(Comparator.comparingDouble(line -> line.from().distanceTo(window.centre())));
        return there;
    }

    private static Point between(Point from, Point to, double share) {
        return new Point(from.x() + share * (to.x() - from.x()), from.y() + share * (to.y() - from.y()));
    }

    /** On either side of the line and as it runs, to be read from below or from the right. */
    private void along(Line stretch, List<Text> places) {
        double runs = stretch.from().directionTo(stretch.to());
        double turn = runs - 180 * Math.rint(runs / 180);
        Point middle = between(stretch.from(), stretch.to(), 0.5);
        for (int side = 1; side >= -1; side -= 2) {
            places.add(Text.centred(Layer.TEXT, words, middle.towards(turn + side * 90, GAP + LETTERS / 2), LETTERS, turn));
        }
    }

    /** Level, to the right or the left of a place on the line: where it bends. */
    private void beside(Line stretch, List<Text> places) {
        places.add(Text.level(Layer.TEXT, words, stretch.from().movedBy(GAP, -LETTERS / 2), LETTERS, Anchor.LEFT));
        places.add(Text.level(Layer.TEXT, words, stretch.from().movedBy(-GAP, -LETTERS / 2), LETTERS, Anchor.RIGHT));
    }
}
