package org.garboard.siting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.Transducer;
import org.garboard.hull.Hull;
import org.garboard.mount.FlushThroughHull;
import org.garboard.mount.Installation;
import org.garboard.mount.KeelPocket;
import org.garboard.mount.Mount;
import org.garboard.mount.PocketWish;
import org.garboard.offsets.EndPoint;
import org.garboard.offsets.Ends;
import org.garboard.offsets.Entry;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.Measure;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.SkinSurface;
import org.garboard.offsets.Station;
import org.garboard.offsets.TableLine;
import org.garboard.offsets.TransomLine;
import org.garboard.units.Angle;

/** Hulls of closed form, through tables that are not rounded, and what is to go into them. */
public final class Boats {
    private final double[] stations;
    private final List<TableLine> lines = new ArrayList<>();

    private Boats(double length, int count) {
        stations = new double[count];
        for (int i = 0; i < count; i++) {
            stations[i] = length * i / (count - 1);
        }
    }

    /** A wedge: keel at z = 0, chine at half-breadth 1 m, sheer 1.2 m out and 1.2 m up, 6 m long. */
    public static Hull prismaticV(double deadriseDeg) {
        double rise = Math.tan(Math.toRadians(deadriseDeg));
        return new Boats(6, 7).named(LineKind.KEEL, "Keel", x -> 0, x -> 0)
            .named(LineKind.CHINE, "Chine", x -> 1, x -> rise)
            .named(LineKind.SHEER, "Sheer", x -> 1.2, x -> 1.2).hull();
    }

    /** The wedge with a transom that leans aft, its foot at x = 5.6 m; where its middle is rounded it stands aft of that plane. */
    public static Hull rakedV(double deadriseDeg, double rakeDeg) {
        double rise = Math.tan(Math.toRadians(deadriseDeg));
        Boats boat = new Boats(6, 7).named(LineKind.KEEL, "Keel", x -> 0, x -> 0)
            .named(LineKind.CHINE, "Chine", x -> 1, x -> rise)
            .named(LineKind.SHEER, "Sheer", x -> 1.2, x -> 1.2);
        OffsetTable table = boat.table();
        return Hull.through(new OffsetTable(table.title(), table.surface(), table.leastCount(), table.stations(), table.lines(),
            new Ends(List.of(), Optional.of(new TransomLine(List.of(new EndPoint("Keel", LineKind.KEEL, 0, 5.6),
                new EndPoint("Sheer", LineKind.SHEER, 0, 5.6 + 1.2 * Math.tan(Math.toRadians(rakeDeg)))), 0)))));
    }

    /** A wedge of 20 deg behind a bow like a knife, 2 m long: forward of it the chine lies on the centreline. */
    public static Hull knifeBow() {
        DoubleUnaryOperator y = x -> x < 2 ? 0 : 1;
        double slope = Math.tan(Math.toRadians(20));
        return new Boats(6, 7).named(LineKind.KEEL, "Keel", x -> 0, x -> 0)
            .named(LineKind.CHINE, "Chine", y, x -> 0.1 + (slope - 0.1) * y.applyAsDouble(x))
            .named(LineKind.SHEER, "Sheer", x -> 0.2 + y.applyAsDouble(x), x -> 1.2).hull();
    }

    /** A wedge with an edge at half-breadth 0.5 m where the deadrise changes. */
    public static Hull brokenV(double innerDeg, double outerDeg) {
        double inner = 0.5 * Math.tan(Math.toRadians(innerDeg));
        double outer = inner + 0.5 * Math.tan(Math.toRadians(outerDeg));
        return new Boats(6, 7).named(LineKind.KEEL, "Keel", x -> 0, x -> 0)
            .named(LineKind.CHINE, "Knuckle", x -> 0.5, x -> inner)
            .named(LineKind.CHINE, "Chine", x -> 1, x -> outer)
            .named(LineKind.SHEER, "Sheer", x -> 1.2, x -> 1.2).hull();
    }

    /** The wedge on a box keel with upright sides: half-siding 0.15 m, 0.3 m deep; the wedge begins at its top, z = 0. */
    public static Hull boxKeel(double deadriseDeg) {
        double rise = Math.tan(Math.toRadians(deadriseDeg));
        return new Boats(6, 7).named(LineKind.KEEL, "Keel", x -> 0, x -> -0.3)
            .row(LineKind.HALF_SIDING, "Half-siding", 0, Measure.HALF_BREADTH, x -> 0.15)
            .named(LineKind.KEEL_TOP, "Top of keel", x -> 0.15, x -> 0)
            .named(LineKind.CHINE, "Chine", x -> 1.15, x -> rise)
            .named(LineKind.SHEER, "Sheer", x -> 1.3, x -> 1.2).hull();
    }

    /** The wedge from a rabbet 0.15 m off the centreline at z = 0, a keel 0.3 m deep hanging below it. */
    public static Hull deepKeel(double deadriseDeg) {
        double rise = Math.tan(Math.toRadians(deadriseDeg));
        return new Boats(6, 7).row(LineKind.KEEL, "Rabbet", 0, Measure.HEIGHT, x -> 0)
            .row(LineKind.RABBET, "Half-siding at rabbet", 0, Measure.HALF_BREADTH, x -> 0.15)
            .row(LineKind.KEEL_BOTTOM, "Keel bottom", 0, Measure.HEIGHT, x -> -0.3)
            .named(LineKind.CHINE, "Chine", x -> 1.15, x -> rise)
            .named(LineKind.SHEER, "Sheer", x -> 1.3, x -> 1.2).hull();
    }

    /** A V whose deadrise falls from fore to aft in a straight line of tan, keel at z = 0, 6 m long. */
    public static Hull warpedV(double foreDeg, double aftDeg) {
        return warped(foreDeg, aftDeg).hull();
    }

    private static Boats warped(double foreDeg, double aftDeg) {
        double fore = Math.tan(Math.toRadians(foreDeg));
        double aft = Math.tan(Math.toRadians(aftDeg));
        return new Boats(6, 7).named(LineKind.KEEL, "Keel", x -> 0, x -> 0)
            .named(LineKind.CHINE, "Chine", x -> 1, x -> fore + (aft - fore) * x / 6)
            .named(LineKind.SHEER, "Sheer", x -> 1.3, x -> 1.5);
    }

    /** The same boat measured from an origin farther forward, or with a negative figure farther aft [m]. */
    static Hull warpedV(double foreDeg, double aftDeg, double from) {
        OffsetTable table = warped(foreDeg, aftDeg).table();
        return Hull.through(new OffsetTable(table.title(), table.surface(), table.leastCount(),
            table.stations().stream().map(station -> new Station(station.name(), station.x() + from)).toList(), table.lines()));
    }

    /** A wedge of 18 deg whose every buttock waves along the length: ten waves, 8 deg at the steepest. */
    public static Hull waves() {
        double number = 2 * Math.PI / 0.6;
        double height = Math.tan(Math.toRadians(8)) / number;
        DoubleBinaryOperator z = (x, y) -> height * Math.sin(number * x) + y * Math.tan(Math.toRadians(18));
        return new Boats(6, 121).named(LineKind.KEEL, "Keel", x -> 0, x -> z.applyAsDouble(x, 0))
            .named(LineKind.CHINE, "Chine", x -> 1, x -> z.applyAsDouble(x, 1))
            .named(LineKind.SHEER, "Sheer", x -> 1.2, x -> 1.2).hull();
    }

    /** A round bottom about a level axis athwart the sections, radius R, chine at half-breadth 1 m. */
    public static Hull cylinder(double radius) {
        return round((x, y) -> radius - Math.sqrt(radius * radius - y * y));
    }

    /** A bottom that is part of a sphere, lowest amidships. */
    public static Hull sphere(double radius) {
        return round((x, y) -> radius - Math.sqrt(radius * radius - (x - 3) * (x - 3) - y * y));
    }

    private static Hull round(DoubleBinaryOperator z) {
        Boats boat = new Boats(6, 25).named(LineKind.KEEL, "Keel", x -> 0, x -> z.applyAsDouble(x, 0))
            .named(LineKind.CHINE, "Chine", x -> 1, x -> z.applyAsDouble(x, 1))
            .named(LineKind.SHEER, "Sheer", x -> 1.1, x -> z.applyAsDouble(x, 1) + 0.8);
        for (int k = 1; k < 10; k++) {
            boat.buttock(k / 10.0, z);
        }
        return boat.hull();
    }

    /**
     * A 39 ft planing boat, 11.9 m long and 1.43 m in half-breadth: keel rising forward, deadrise 22 deg
     * aft and growing forward, a slight knuckle half-way out, straight frames between the lines.
     */
    public static Hull thirtyNineFeet() {
        double length = 11.9;
        DoubleUnaryOperator keel = x -> 1.45 * ahead(x, 6.4, 3.6);
        DoubleUnaryOperator chineY = x -> 0.06 + 1.37 * (1 - ahead(x, 7, 2.4));
        DoubleUnaryOperator tangent = x -> Math.tan(Math.toRadians(22 + 26 * ahead(x, 8.2, 2.8)));
        DoubleUnaryOperator chineZ = x -> keel.applyAsDouble(x) + chineY.applyAsDouble(x) * tangent.applyAsDouble(x);
        DoubleUnaryOperator midY = x -> 0.55 * chineY.applyAsDouble(x);
        DoubleUnaryOperator midZ = x -> keel.applyAsDouble(x) + 0.98 * midY.applyAsDouble(x) * tangent.applyAsDouble(x);
        DoubleUnaryOperator sheerY = x -> 0.11 + 1.57 * (1 - ahead(x, 8.2, 3.2));
        DoubleUnaryOperator sheerZ = x -> 1.6 + 0.6 * ahead(x, 11, 2);
        Boats boat = new Boats(length, 13).named(LineKind.KEEL, "Keel", x -> 0, keel)
            .named(LineKind.CHINE, "Knuckle", midY, midZ)
            .named(LineKind.CHINE, "Chine", chineY, chineZ)
            .named(LineKind.SHEER, "Sheer", sheerY, sheerZ);
        for (int k = 1; k <= 4; k++) {
            boat.buttock(0.3 * k, (x, y) -> y <= midY.applyAsDouble(x)
                ? between(y, 0, keel.applyAsDouble(x), midY.applyAsDouble(x), midZ.applyAsDouble(x))
                : y <= chineY.applyAsDouble(x) ? between(y, midY.applyAsDouble(x), midZ.applyAsDouble(x),
                    chineY.applyAsDouble(x), chineZ.applyAsDouble(x)) : Double.NaN);
        }
        for (int k = 2; k <= 5; k++) {
            boat.waterline(0.3 * k, (x, z) -> z < chineZ.applyAsDouble(x) || z > sheerZ.applyAsDouble(x) ? Double.NaN
                : between(z, chineZ.applyAsDouble(x), chineY.applyAsDouble(x),
                    sheerZ.applyAsDouble(x), sheerY.applyAsDouble(x)));
        }
        return boat.hull();
    }

    /** 1 at the stem, 0 from {@code end} aft. */
    private static double ahead(double x, double end, double power) {
        return x < end ? Math.pow((end - x) / end, power) : 0;
    }

    private static double between(double at, double from, double valueFrom, double to, double valueTo) {
        return valueFrom + (valueTo - valueFrom) * (at - from) / (to - from);
    }

    static SitingTask inFeet(SitingTask task) {
        return new SitingTask(task.draught(), task.installation(), task.mounts(), Mark.QUARTER_INCH, task.features());
    }

    static SitingTask task(double draught, double length, double width, double inclinationDeg, Mount... mounts) {
        Transducer body = new Transducer("body", length, width, 0.060, 0, 0.020, Angle.ofDegrees(inclinationDeg));
        return new SitingTask(draught, new Installation(body, new PocketWish(OptionalDouble.empty(), 0.005, 8)),
            List.of(mounts), Mark.FIVE_MILLIMETRES, BottomFeatures.NOT_LISTED);
    }

    static final FlushThroughHull FLUSH = new FlushThroughHull();
    static final KeelPocket POCKET = new KeelPocket();

    private Boats named(LineKind kind, String name, DoubleUnaryOperator y, DoubleUnaryOperator z) {
        if (kind != LineKind.KEEL) {
            row(kind, name, 0, Measure.HALF_BREADTH, y);
        }
        return row(kind, name, 0, Measure.HEIGHT, z);
    }

    private Boats buttock(double y, DoubleBinaryOperator z) {
        return row(LineKind.BUTTOCK, "Buttock " + y, y, Measure.HEIGHT, x -> z.applyAsDouble(x, y));
    }

    private Boats waterline(double z, DoubleBinaryOperator y) {
        return row(LineKind.WATERLINE, "WL " + z, z, Measure.HALF_BREADTH, x -> y.applyAsDouble(x, z));
    }

    private Boats row(LineKind kind, String name, double level, Measure measure, DoubleUnaryOperator value) {
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < stations.length; i++) {
            double entry = value.applyAsDouble(stations[i]);
            if (!Double.isNaN(entry)) {
                entries.add(new Entry(i, entry));
            }
        }
        lines.add(new TableLine(kind, name, level, measure, entries));
        return this;
    }

    private Hull hull() {
        return Hull.through(table());
    }

    private OffsetTable table() {
        List<Station> named = new ArrayList<>();
        for (int i = 0; i < stations.length; i++) {
            named.add(new Station(String.valueOf(i), stations[i]));
        }
        return new OffsetTable("closed form", SkinSurface.OUTSIDE_OF_SKIN, 0.001, named, lines);
    }
}
