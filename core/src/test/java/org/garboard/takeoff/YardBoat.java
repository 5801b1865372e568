package org.garboard.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.OpenEnd;
import org.garboard.offsets.Station;
import org.garboard.units.Angle;

/**
 * A boat in closed form, and what a yard reads off her as she stands blocked: written from the hull outward,
 * turned by heel and then by trim, cut by plumb planes.
 *
 * @param skin half-breadth and height at x and share of the way from keel (0) by chine (1), if she has one, to the edge
 * @param chine whether share 1 is a knuckle; else the edge
 */
record YardBoat(String name, Skin skin, boolean chine, DoubleUnaryOperator keel) {
    /** The skin. */
    interface Skin {
        double[] at(double x, double share);
    }

    private static final double STEM = 6;

    static List<YardBoat> all() {
        return List.of(vBottom(), roundBilge(), warped());
    }

    /** Deadrise 18 deg aft, more forward; chine, then a side out to share 1.5. */
    static YardBoat vBottom() {
        DoubleUnaryOperator keel = x -> 0;
        return new YardBoat("v bottom", (x, s) -> {
            double beam = 1.2 - 0.004 * (x - STEM) * (x - STEM);
            double tan = Math.tan(Math.toRadians(18 + 0.6 * (STEM - x)));
            return s <= 1 ? new double[] {s * beam, s * beam * tan}
                : new double[] {beam + (s - 1) * 0.2, beam * tan + (s - 1) * 0.9};
        }, true, keel);
    }

    /** Elliptic sections that grow and rise; no chine, measured to share 1. */
    static YardBoat roundBilge() {
        DoubleUnaryOperator keel = x -> 0.01 * (x - 3) * (x - 3);
        return new YardBoat("round bilge", (x, s) -> {
            double angle = s * Math.toRadians(75);
            double beam = 1.4 - 0.012 * (x - 4) * (x - 4);
            double depth = 1.0 - 0.008 * (x - 4) * (x - 4);
            return new double[] {beam * Math.sin(angle), keel.applyAsDouble(x) + depth * (1 - Math.cos(angle))};
        }, false, keel);
    }

    /** Hollow, warped bottom to a chine, no side measured. */
    static YardBoat warped() {
        DoubleUnaryOperator keel = x -> 0.004 * x * x;
        return new YardBoat("warped", (x, s) -> {
            double beam = 1.0 + 0.03 * x - 0.002 * x * x;
            double t = s;
            double rise = beam * Math.tan(Math.toRadians(24 - 1.5 * x));
            return new double[] {t * beam, keel.applyAsDouble(x) + rise * (t - 0.1 * t * (1 - t))};
        }, true, keel);
    }

    double edge() {
        return name.equals("v bottom") ? 1.5 : 1;
    }

    double[] at(double x, double share) {
        return skin.at(x, share);
    }

    /** Reads her off. */
    final class Yard {
        private final Angle trim;
        private final Angle heel;
        private final double count;
        private final List<TakenPoint> points = new ArrayList<>();
        private final List<FloatMark> marks = new ArrayList<>();
        private final double datumX = 7;
        private int row = 10;

        Yard(Angle trim, Angle heel, double count) {
            this.trim = trim;
            this.heel = heel;
            this.count = count;
        }

        /** {x, y, z} as blocked of a place of the boat: heel, trim, then where the line was stretched. */
        private double[] blocked(double x, double y, double z) {
            double y1 = y * Math.cos(heel.radians()) + z * Math.sin(heel.radians());
            double z1 = z * Math.cos(heel.radians()) - y * Math.sin(heel.radians());
            return new double[] {x * Math.cos(trim.radians()) + z1 * Math.sin(trim.radians()) - datumX, y1 + 0.013,
                z1 * Math.cos(trim.radians()) - x * Math.sin(trim.radians()) + 0.777};
        }

        private double[] onSkin(double x, double share, Side side) {
            double[] at = at(x, share);
            return blocked(x, side == Side.PORT ? -at[0] : at[0], at[1]);
        }

        private double round(double metres) {
            return count * Math.rint(metres / count);
        }

        /** Where the skin at a share goes through a plumb plane. */
        private void read(int station, double plane, double share, Side side, Mark mark) {
            double low = -2;
            double high = 12;
            for (int i = 0; i < 100; i++) {
                double middle = 0.5 * (low + high);
                if (onSkin(middle, share, side)[0] < plane) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            double[] place = onSkin(low, share, side);
            points.add(new TakenPoint(row++, station, side, round(place[1]), round(place[2]), mark));
        }

        private void floatMark(double x, double z, Side side) {
            double low = 0;
            double high = edge();
            for (int i = 0; i < 100; i++) {
                double middle = 0.5 * (low + high);
                if (at(x, middle)[1] < z) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            double[] place = onSkin(x, low, side);
            // the tape along the line is read as finely as all else, and errs with the slope of trim alone
            marks.add(new FloatMark(row++, round(place[0]), round(place[1]), round(place[2])));
        }

        TakeOff takeOff(double... planes) {
            List<Station> stations = new ArrayList<>();
            for (int j = 0; j < planes.length; j++) {
                double plane = planes[j] - datumX;
                stations.add(new Station("S" + j, plane));
                read(j, plane, 0, Side.CENTRE, new Mark(Optional.of(LineKind.KEEL), "keel"));
                for (Side side : List.of(Side.PORT, Side.STARBOARD)) {
                    for (double share = 0.125; share < edge() - 0.01; share += 0.125) {
                        boolean knuckle = chine && share == 1;
                        read(j, plane, share, side, knuckle ? new Mark(Optional.of(LineKind.CHINE), "Chine")
                            : Math.abs(share - 0.5) < 0.01 ? new Mark(Optional.empty(), "P1") : Mark.NONE);
                    }
                    read(j, plane, edge(), side, edge() == 1 && chine
                        ? new Mark(Optional.of(LineKind.CHINE), "Chine") : new Mark(Optional.of(LineKind.EDGE), "edge"));
                }
            }
            for (Side side : List.of(Side.PORT, Side.STARBOARD)) {
                floatMark(1, 0.3, side);
                floatMark(8, 0.3, side);
            }
            double datumZ = blocked(datumX, 0, keel.applyAsDouble(datumX))[2];
            double datumShift = blocked(datumX, 0, keel.applyAsDouble(datumX))[0];
            List<Station> fromDatum = stations.stream().map(s -> new Station(s.name(), s.x() - datumShift)).toList();
            List<FloatMark> moved = marks.stream().map(m -> new FloatMark(m.row(), m.x() - datumShift, m.y(), m.z())).toList();
            return new TakeOff(name, count, new Datum("transom", OptionalDouble.of(datumZ)), fromDatum, points, moved,
                new TrimFrom.FloatMarks("load waterline", OptionalDouble.of(0.3)), 0, Set.of(OpenEnd.FORWARD));
        }

        double datum() {
            return datumX;
        }
    }
}
