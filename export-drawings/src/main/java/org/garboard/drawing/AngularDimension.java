package org.garboard.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * The angle between two lines that meet, counter-clockwise from the first to the second, less
 * than half a turn.
 *
 * @param vertex where they meet
 * @param first end of the first line
 * @param second end of the second line
 * @param radius of the dimension arc [mm]
 */
public record AngularDimension(Point vertex, Point first, Point second, double radius,
                               String words, double height) implements Dimension {
    public AngularDimension {
        double angle = angle(vertex, first, second);
        if (!(angle > 1e-6 && angle < Math.PI)) {
            throw new IllegalArgumentException("an angle \"" + words + "\" runs from the first line to the second, "
                    + "more than nothing and less than half a turn; this is " + Math.toDegrees(angle) + " deg");
        }
    }

    private static double angle(Point vertex, Point first, Point second) {
        double turn = Math.toRadians(vertex.directionTo(second) - vertex.directionTo(first));
        return turn < 0 ? turn + 2 * Math.PI : turn;
    }

    @Override
    public double measured() {
        return angle(vertex, first, second);
    }

    @Override
    public double trueSize(Scale scale) {
        return Math.toDegrees(measured());
    }

    private double startDeg() {
        return vertex.directionTo(first);
    }

    private double middleDeg() {
        return startDeg() + Math.toDegrees(measured()) / 2;
    }

    private double endDeg() {
        return startDeg() + Math.toDegrees(measured());
    }

    /** A point of the arc between the lines. */
    public Point onArc() {
        return vertex.towards(middleDeg(), radius);
    }

    private boolean arrowsInside() {
        return measured() * radius >= 2 * Dimension.arrow(height) + 1;
    }

    @Override
    public Text lettering() {
        Point beside = vertex.towards(middleDeg(), radius + ABOVE_LINE + 0.5);
        double across = Math.cos(Math.toRadians(middleDeg()));
        if (Math.abs(across) < 0.3) {
            double lift = Math.sin(Math.toRadians(middleDeg())) > 0 ? 0 : -height;
            return Text.level(Layer.DIM, words, beside.movedBy(0, lift), height, Anchor.MIDDLE);
        }
        Anchor anchor = across > 0 ? Anchor.LEFT : Anchor.RIGHT;
        return Text.level(Layer.DIM, words, beside.movedBy(0, -height / 2), height, anchor);
    }

    @Override
    public List<Entity> strokes() {
        List<Entity> strokes = new ArrayList<>();
        extension(first, strokes);
        extension(second, strokes);
        double arrow = Dimension.arrow(height);
        double tail = arrowsInside() ? 0 : Math.toDegrees((arrow + 1.5) / radius);
        strokes.add(new Arc(Layer.DIM, vertex, radius, startDeg() - tail, endDeg() + tail));
        // an arrow head on an arc is turned by half the angle it covers, so that its axis is a chord
        double lean = Math.toDegrees(arrow / radius) / 2;
        double inside = arrowsInside() ? 1 : -1;
        strokes.add(Solid.arrow(Layer.DIM, vertex.towards(startDeg(), radius),
                startDeg() - inside * 90 + inside * lean, arrow));
        strokes.add(Solid.arrow(Layer.DIM, vertex.towards(endDeg(), radius),
                endDeg() + inside * 90 - inside * lean, arrow));
        strokes.add(lettering());
        return strokes;
    }

    private void extension(Point end, List<Entity> strokes) {
        double direction = vertex.directionTo(end);
        if (radius > vertex.distanceTo(end) + GAP) {
            strokes.add(new Line(Layer.DIM, end.towards(direction, GAP), vertex.towards(direction, radius + OVERRUN)));
        }
    }

    @Override
    public AngularDimension movedBy(double dx, double dy) {
        return new AngularDimension(vertex.movedBy(dx, dy), first.movedBy(dx, dy), second.movedBy(dx, dy),
                radius, words, height);
    }

    @Override
    public void drawOn(Canvas canvas) {
        canvas.angularDimension(this);
    }
}
