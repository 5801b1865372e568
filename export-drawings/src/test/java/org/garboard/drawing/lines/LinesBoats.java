package org.garboard.drawing.lines;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.garboard.offsets.Entry;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.Measure;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.SkinSurface;
import org.garboard.offsets.Station;
import org.garboard.offsets.TableLine;

/** Tables of simple hulls to draw. */
public final class LinesBoats {

    private final List<Station> stations = new ArrayList<>();
    private final List<TableLine> lines = new ArrayList<>();

    private LinesBoats(double length, int count) {
        for (int i = 0; i < count; i++) {
            stations.add(new Station(String.valueOf(i), length * i / (count - 1)));
        }
    }

    private LinesBoats row(LineKind kind, String name, double level, Measure measure, DoubleUnaryOperator value) {
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < stations.size(); i++) {
            double v = value.applyAsDouble(stations.get(i).x());
            if (!Double.isNaN(v)) {
                entries.add(new Entry(i, v));
            }
        }
        lines.add(new TableLine(kind, name, level, measure, entries));
        return this;
    }

    private LinesBoats line(LineKind kind, String name, DoubleUnaryOperator y, DoubleUnaryOperator z) {
        return row(kind, name, 0, Measure.HEIGHT, z).row(kind, name, 0, Measure.HALF_BREADTH, y);
    }

    private OffsetTable table(String title, double leastCount) {
        return new OffsetTable(title, SkinSurface.OUTSIDE_OF_SKIN, leastCount, stations, lines);
    }

    /** V bottom with a chine and flared sides, 6 m, with waterlines and buttocks of its own. */
    public static OffsetTable chine() {
        DoubleUnaryOperator keel = x -> 0.6 * Math.pow(1 - x / 6, 4);
        DoubleUnaryOperator chineBreadth = x -> 0.05 + 0.95 * (1 - Math.pow(1 - x / 6, 3));
        DoubleUnaryOperator chineHeight = x -> keel.applyAsDouble(x) + chineBreadth.applyAsDouble(x) * (0.3 + 0.3 * Math.pow(1 - x / 6, 2));
        DoubleUnaryOperator sheerBreadth = x -> chineBreadth.applyAsDouble(x) + 0.1 + 0.2 * (1 - x / 6);
        DoubleUnaryOperator sheerHeight = x -> 1.1 + 0.3 * Math.pow(1 - x / 6, 2);
        LinesBoats boat = new LinesBoats(6, 7).row(LineKind.KEEL, "Keel", 0, Measure.HEIGHT, keel)
                .line(LineKind.CHINE, "Chine", chineBreadth, chineHeight).line(LineKind.SHEER, "Sheer", sheerBreadth, sheerHeight);
        for (double y : new double[] {0.3, 0.6}) {
            boat.row(LineKind.BUTTOCK, "Buttock " + y, y, Measure.HEIGHT, x -> y < chineBreadth.applyAsDouble(x) - 0.05
                    ? keel.applyAsDouble(x) + (chineHeight.applyAsDouble(x) - keel.applyAsDouble(x)) * y / chineBreadth.applyAsDouble(x)
                    : Double.NaN);
        }
        for (double z : new double[] {0.3, 0.6, 0.9}) {
            boat.row(LineKind.WATERLINE, "WL " + z, z, Measure.HALF_BREADTH, x -> {
                double low = chineHeight.applyAsDouble(x);
                double share = (z - low) / (sheerHeight.applyAsDouble(x) - low);
                return share > 0.05 ? chineBreadth.applyAsDouble(x) + share * (sheerBreadth.applyAsDouble(x) - chineBreadth.applyAsDouble(x))
                        : Double.NaN;
            });
        }
        return boat.table("Chine boat", 0.001);
    }

    /** Parabolic in plan and in section, sharp at both ends. */
    static OffsetTable doubleEnded() {
        DoubleUnaryOperator plan = x -> 1.1 * (1 - Math.pow(x / 4.5 - 1, 2));
        LinesBoats boat = new LinesBoats(9, 11).row(LineKind.KEEL, "Keel", 0, Measure.HEIGHT, x -> 0)
                .line(LineKind.SHEER, "Sheer", plan, x -> 1.4);
        for (double z : new double[] {0.2, 0.5, 0.8, 1.1}) {
            boat.row(LineKind.WATERLINE, "WL " + z, z, Measure.HALF_BREADTH, x -> plan.applyAsDouble(x) * (1 - Math.pow(1 - z / 1.4, 2)));
        }
        return boat.table("Double-ender", 0.001);
    }

    /** One section throughout: keel (0, 0), chine (1, 0.25), sheer (1.1, 1.2); keel, chine and sheer alone. */
    static OffsetTable prism() {
        return new LinesBoats(6, 4).row(LineKind.KEEL, "Keel", 0, Measure.HEIGHT, x -> 0)
                .line(LineKind.CHINE, "Chine", x -> 1, x -> 0.25).line(LineKind.SHEER, "Sheer", x -> 1.1, x -> 1.2)
                .table("Prism", 0.001);
    }
}
