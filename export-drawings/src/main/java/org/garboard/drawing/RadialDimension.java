package org.garboard.drawing;

import java.util.List;

/**
 * A radius or diameter, lettered outside the curve.
 *
 * @param measure which of the two; the words begin with R or Ø
 * @param centre of the curve
 * @param radius of the curve [mm]
 * @param directionDeg in which the arrow meets the curve, seen from the centre
 * @param reach of the line beyond the curve [mm]
 */
public record RadialDimension(Measure measure, Point centre, double radius, double directionDeg, double reach,
                              String words, double height) implements Dimension {

    /** What is given of the curve. */
    public enum Measure { RADIUS, DIAMETER }

    public RadialDimension {
        String sign = measure == Measure.RADIUS ? "R" : "Ø";
        if (!words.startsWith(sign)) {
            throw new IllegalArgumentException("a " + measure + " is lettered \"" + sign + "…\", not \"" + words + "\"");
        }
    }

    @Override
    public double measured() {
        return measure == Measure.RADIUS ? radius : 2 * radius;
    }

    @Override
    public double trueSize(Scale scale) {
        return scale.trueMm(measured());
    }

    /** Where the arrow meets the curve. */
    public Point onCurve() {
        return centre.towards(directionDeg, radius);
    }

    /** The curve's point opposite. */
    public Point opposite() {
        return centre.towards(directionDeg + 180, radius);
    }

    private Point elbow() {
        return centre.towards(directionDeg, radius + reach);
    }

    private boolean toTheRight() {
        return Math.cos(Math.toRadians(directionDeg)) >= 0;
    }

    @Override
    public Text lettering() {
        return toTheRight()
                ? Text.level(Layer.DIM, words, elbow().movedBy(1, -height / 2), height, Anchor.LEFT)
                : Text.level(Layer.DIM, words, elbow().movedBy(-1, -height / 2), height, Anchor.RIGHT);
    }

    @Override
    public List<Entity> strokes() {
        return List.of(new Line(Layer.DIM, onCurve(), elbow()),
                Solid.arrow(Layer.DIM, onCurve(), directionDeg + 180, Dimension.arrow(height)),
                lettering());
    }

    @Override
    public RadialDimension movedBy(double dx, double dy) {
        return new RadialDimension(measure, centre.movedBy(dx, dy), radius, directionDeg, reach, words, height);
    }

    @Override
    public void drawOn(Canvas canvas) {
        canvas.radialDimension(this);
    }
}
