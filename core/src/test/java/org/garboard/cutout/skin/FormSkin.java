package org.garboard.cutout.skin;

import java.util.function.DoubleBinaryOperator;

/**
 * A skin of closed form: height and slopes as functions of the plan.
 *
 * @param bend curvature it tells, the largest anywhere [1/m]
 */
public record FormSkin(DoubleBinaryOperator z, DoubleBinaryOperator zx, DoubleBinaryOperator zy, double bend) implements Skin {

    @Override
    public boolean at(double x, double y, double[] out) {
        out[0] = z.applyAsDouble(x, y);
        out[1] = zx.applyAsDouble(x, y);
        out[2] = zy.applyAsDouble(x, y);
        out[3] = bend;
        return out[0] == out[0];
    }

    /** A plane. */
    public static FormSkin plane(double aft, double out) {
        return new FormSkin((x, y) -> aft * x + out * y, (x, y) -> aft, (x, y) -> out, 0);
    }

    /** A cylinder of radius r, its lowest generator on z = 0, running fore and aft but turned in plan by an angle. */
    public static FormSkin cylinder(double r, double turn) {
        double c = Math.cos(turn);
        double s = Math.sin(turn);
        return new FormSkin((x, y) -> r - Math.sqrt(r * r - square(c * y - s * x)),
            (x, y) -> -s * (c * y - s * x) / Math.sqrt(r * r - square(c * y - s * x)),
            (x, y) -> c * (c * y - s * x) / Math.sqrt(r * r - square(c * y - s * x)), 1 / r);
    }

    /** A cone with its tip at the origin, axis along x, half-angle a: the underside z = -sqrt(x^2 tan^2 a - y^2). */
    public static FormSkin cone(double angle) {
        double t = Math.tan(angle);
        return new FormSkin((x, y) -> -Math.sqrt(x * x * t * t - y * y),
            (x, y) -> -x * t * t / Math.sqrt(x * x * t * t - y * y),
            (x, y) -> y / Math.sqrt(x * x * t * t - y * y), 2);
    }

    /** A ball's underside, radius r, lowest point at the origin. */
    public static FormSkin ball(double r) {
        return new FormSkin((x, y) -> r - Math.sqrt(r * r - x * x - y * y),
            (x, y) -> x / Math.sqrt(r * r - x * x - y * y), (x, y) -> y / Math.sqrt(r * r - x * x - y * y), 1 / r);
    }

    private static double square(double a) {
        return a * a;
    }
}
