package org.garboard.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * A length between two points, along, level or upright. Lettering that does not fit between the
 * arrows stands beyond the end that comes later in reading, right or above: there a CAD program
 * that draws the dimension anew puts it too.
 *
 * @param direction of measuring
 * @param from first point measured
 * @param to second point
 * @param through a point that the dimension line passes through
 */
public record LinearDimension(Direction direction, Point from, Point to, Point through,
                              String words, double height) implements Dimension {

    /** Along which line the distance is taken. */
    public enum Direction { ALIGNED, HORIZONTAL, VERTICAL }

    public LinearDimension {
        if (!(span(direction, from, to) > 1e-6)) {
            throw new IllegalArgumentException("a dimension \"" + words + "\" of no length at " + from);
        }
    }

    private static double span(Direction direction, Point from, Point to) {
        return switch (direction) {
            case ALIGNED -> from.distanceTo(to);
            case HORIZONTAL -> Math.abs(to.x() - from.x());
            case VERTICAL -> Math.abs(to.y() - from.y());
        };
    }

    @Override
    public double measured() {
        return span(direction, from, to);
    }

    @Override
    public double trueSize(Scale scale) {
        return scale.trueMm(measured());
    }

    /** Direction of the dimension line [deg], from the first point to the second. */
    public double directionDeg() {
        return switch (direction) {
            case ALIGNED -> from.directionTo(to);
            case HORIZONTAL -> to.x() > from.x() ? 0 : 180;
            case VERTICAL -> to.y() > from.y() ? 90 : -90;
        };
    }

    /** The dimension line's end at the first point. */
    public Point lineStart() {
        return onLine(from);
    }

    /** The dimension line's end at the second point. */
    public Point lineEnd() {
        return onLine(to);
    }

    private Point onLine(Point point) {
        return switch (direction) {
            case HORIZONTAL -> new Point(point.x(), through.y());
            case VERTICAL -> new Point(through.x(), point.y());
            case ALIGNED -> {
                double across = directionDeg() + 90;
                double radians = Math.toRadians(across);
                double distance = (through.x() - point.x()) * Math.cos(radians)
                        + (through.y() - point.y()) * Math.sin(radians);
                yield point.towards(across, distance);
            }
        };
    }

    /** Read from below or from the right (ISO 129-1): more than -90 to 90 degrees. */
    private double readingDeg() {
        double direction = directionDeg();
        if (direction > 90) {
            return direction - 180;
        }
        return direction <= -90 ? direction + 180 : direction;
    }

    private double wordsExtent() {
        return LetterWidths.extent(words, height);
    }

    private boolean wordsBetween() {
        return wordsExtent() + 1 <= measured();
    }

    private boolean arrowsInside() {
        double arrows = 2 * Dimension.arrow(height);
        return wordsBetween() ? wordsExtent() + arrows + 1 <= measured() : arrows + 1 <= measured();
    }

    @Override
    public Text lettering() {
        double reading = readingDeg();
        Point middle = wordsBetween() ? lineMiddle() : lastInReading().towards(reading, tail() + wordsExtent() / 2);
        return new Text(Layer.DIM, words, middle.towards(reading + 90, ABOVE_LINE), height, Anchor.MIDDLE, reading);
    }

    /** Where lettering would stand if it fitted between the arrows, its middle. */
    public Point letteringBetween() {
        return lineMiddle().towards(readingDeg() + 90, ABOVE_LINE + height / 2);
    }

    private Point lineMiddle() {
        return lineStart().midwayTo(lineEnd());
    }

    private Point lastInReading() {
        return forwards() ? lineEnd() : lineStart();
    }

    /** Whether the second point comes later in reading than the first. */
    private boolean forwards() {
        return Math.abs(directionDeg() - readingDeg()) < 1;
    }

    /** What stands outside the extension lines before lettering may begin. */
    private double tail() {
        return Math.max(OVERRUN, arrowsInside() ? 0 : Dimension.arrow(height) + 0.5);
    }

    @Override
    public List<Entity> strokes() {
        List<Entity> strokes = new ArrayList<>();
        extension(from, lineStart(), strokes);
        extension(to, lineEnd(), strokes);
        double direction = directionDeg();
        double plain = arrowsInside() ? 0 : Dimension.arrow(height) + 1.5;
        double lettered = wordsBetween() ? plain : tail() + wordsExtent();
        strokes.add(new Line(Layer.DIM, lineStart().towards(direction, forwards() ? -plain : -lettered),
                lineEnd().towards(direction, forwards() ? lettered : plain)));
        double pointing = arrowsInside() ? direction : direction + 180;
        strokes.add(Solid.arrow(Layer.DIM, lineStart(), pointing + 180, Dimension.arrow(height)));
        strokes.add(Solid.arrow(Layer.DIM, lineEnd(), pointing, Dimension.arrow(height)));
        strokes.add(lettering());
        return strokes;
    }

    private static void extension(Point measured, Point onLine, List<Entity> strokes) {
        if (measured.distanceTo(onLine) > GAP) {
            double direction = measured.directionTo(onLine);
            strokes.add(new Line(Layer.DIM, measured.towards(direction, GAP), onLine.towards(direction, OVERRUN)));
        }
    }

    @Override
    public LinearDimension movedBy(double dx, double dy) {
        return new LinearDimension(direction, from.movedBy(dx, dy), to.movedBy(dx, dy),
                through.movedBy(dx, dy), words, height);
    }

    @Override
    public void drawOn(Canvas canvas) {
        canvas.linearDimension(this);
    }
}
