package org.garboard.slips;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.OffsetTable;
import org.garboard.slips.pen.Writing;
import org.garboard.units.LengthUnit;

/**
 * Boats of closed form and their tables, drawn by lot: 5 to 20 m long, 9 to 16 stations evenly set, halved
 * forward or closing up forward; one chine, a chine flat, a flat keel, or round bilges; full and fine bows, rising
 * keels, warp, belly and hollow, flare and tumblehome; tables in six notations.
 */
final class BoatLot {
    private static final double GRID = 0.0762;
    /** Numbers whose boat no yard would build are passed over for the next of this series. */
    private static final long NEXT = 100_000;

    private final Random lot;
    private final double length;
    private final double[] stations;
    private final double beam;
    private final double depth;
    private final double stem;
    private final List<FormulaBoat.Line> lines = new ArrayList<>();
    private final List<DoubleUnaryOperator> bulges = new ArrayList<>();

    /** How a table of the lot is written. */
    enum Hand {
        EIGHTHS(0.003175, new Writing.FeetInchesEighths()),
        MILLIMETRES(0.001, new Writing.Decimals(LengthUnit.MILLIMETRE)),
        EIGHTHS_AGAIN(0.003175, new Writing.FeetInchesEighths()),
        METRES(0.001, new Writing.Decimals(LengthUnit.METRE)),
        CENTIMETRES(0.001, new Writing.Decimals(LengthUnit.CENTIMETRE)),
        FEET(0.003048, new Writing.Decimals(LengthUnit.FOOT)),
        INCHES(0.00254, new Writing.Decimals(LengthUnit.INCH));

        final double step;
        final Writing writing;

        Hand(double step, Writing writing) {
            this.step = step;
            this.writing = writing;
        }

        static Hand of(long number) {
            return values()[(int) (number % values().length)];
        }
    }

    private BoatLot(long seed) {
        lot = new Random(seed * 31 + 7);
        length = draw(5, 20);
        stations = drawStations();
        beam = length * draw(0.13, 0.19) * Math.pow(10 / length, 0.25);
        depth = beam * draw(0.8, 1.2);
        stem = draw(0.01, 0.06) * beam;
        double rise = depth * draw(0.35, 0.75);
        double from = draw(0, 0.45);
        double power = draw(2.5, 6);
        line(LineKind.KEEL, "Keel", x -> 0, x -> rise * ahead(x, from, power));
        switch (lot.nextInt(6)) {
            case 0 -> round();
            case 1 -> {
                flatKeel();
                bottom();
            }
            case 2 -> {
                bottom();
                chineFlat();
            }
            default -> bottom();
        }
        if (last().kind() != LineKind.SHEER) {
            topside();
        }
    }

    static FormulaBoat boat(long number) {
        for (long seed = number; ; seed += NEXT) {
            BoatLot lot = new BoatLot(seed);
            FormulaBoat boat = new FormulaBoat(lot.stations, lot.lines, lot.bulges);
            if (boat.isBuildable()) {
                return boat;
            }
        }
    }

    static OffsetTable table(long number) {
        Random lot = new Random(number * 17 + 3);
        Hand hand = Hand.of(number);
        double grid = hand.step == 0.001 ? 0.1 : GRID;
        return boat(number).table(hand.step, grid, 2 + lot.nextInt(4), 2 + lot.nextInt(5));
    }

    private double draw(double from, double to) {
        return from + (to - from) * lot.nextDouble();
    }

    private double[] drawStations() {
        int gaps = 8 + lot.nextInt(6);
        int layout = lot.nextInt(4);
        List<Double> shares = new ArrayList<>();
        if (layout == 3) {
            double[] widths = new double[gaps];
            for (int i = 0; i < gaps; i++) {
                widths[i] = 0.35 + 0.65 * Math.min(1, i / (0.5 * gaps));
            }
            double sum = 0;
            for (double width : widths) {
                shares.add(sum / DoubleStream.of(widths).sum());
                sum += width;
            }
        } else {
            for (int i = 0; i < gaps; i++) {
                shares.add((double) i / gaps);
                if (i < layout) {
                    shares.add((i + 0.5) / gaps);
                }
            }
        }
        shares.add(1.0);
        return shares.stream().mapToDouble(share -> Math.rint(share * length / GRID) * GRID).toArray();
    }

    /** 1 at the stem, 0 at the transom. */
    private double forward(double x) {
        return Math.max(0, 1 - x / length);
    }

    /** 0 up to a share of the length from aft, then rising to 1 at the stem. */
    private double ahead(double x, double from, double power) {
        double g = forward(x);
        return g > from ? Math.pow((g - from) / (1 - from), power) : 0;
    }

    private double aft(double x, double from, double power) {
        double s = Math.min(1, x / length);
        return s > from ? Math.pow((s - from) / (1 - from), power) : 0;
    }

    private void line(LineKind kind, String name, DoubleUnaryOperator y, DoubleUnaryOperator z) {
        lines.add(new FormulaBoat.Line(kind, name, y, z));
    }

    private FormulaBoat.Line last() {
        return lines.get(lines.size() - 1);
    }

    private DoubleUnaryOperator sheerHeight() {
        double spring = depth * draw(0.1, 0.45);
        double lowest = draw(0.1, 0.35);
        return x -> depth + spring * Math.pow((forward(x) - lowest) / (1 - lowest), 2);
    }

    private void round() {
        double power = draw(2.3, 4.5);
        double narrow = draw(0.1, 0.5);
        double narrowPower = draw(2.5, 4);
        double bilge = draw(0.12, 0.28);
        double slack = draw(0.5, 1.5);
        line(LineKind.SHEER, "Sheer", x -> stem + beam * (1 - ahead(x, 0, power)) * (1 - narrow * aft(x, 0.3, narrowPower)),
            sheerHeight());
        bulges.add(x -> bilge * (1 - 0.85 * Math.pow(forward(x), slack)));
    }

    private void flatKeel() {
        double siding = draw(0.03, 0.08);
        DoubleUnaryOperator keel = last().z();
        line(LineKind.HALF_SIDING, "Half-siding", x -> 0.8 * siding * (1 - ahead(x, 0.2, 2.5)) + 0.2 * stem, keel);
        bulges.add(x -> 0);
    }

    private void bottom() {
        double power = draw(2.3, 4.5);
        double from = draw(0, 0.35);
        double narrowing = draw(0, 0.12);
        double deadrise = draw(5, 24);
        double twist = draw(0, 14);
        double twistPower = draw(1, 2.5);
        double bow = draw(12, 28);
        double bowPower = draw(2.2, 4);
        double belly = draw(-0.03, 0.04);
        double bellyForward = draw(-0.025, 0.025);
        DoubleUnaryOperator keel = lines.get(0).z();
        DoubleUnaryOperator y = x -> stem + beam * (1 - ahead(x, from, power)) - narrowing * beam * aft(x, 0.5, 2.5);
        line(LineKind.CHINE, "Chine", y, x -> keel.applyAsDouble(x) + y.applyAsDouble(x) * Math.tan(Math.toRadians(
            deadrise + twist * Math.pow(forward(x), twistPower) + bow * Math.pow(forward(x), bowPower))));
        bulges.add(x -> belly + bellyForward * forward(x));
    }

    private void chineFlat() {
        double width = draw(0.05, 0.12);
        double drop = draw(-0.05, 0.15);
        FormulaBoat.Line chine = last();
        DoubleUnaryOperator out = x -> width * (1 - ahead(x, 0.3, 2.5));
        line(LineKind.CHINE, "Outer chine", x -> chine.at(x, 0) + out.applyAsDouble(x),
            x -> chine.at(x, 1) + drop * out.applyAsDouble(x));
        bulges.add(x -> 0);
    }

    private void topside() {
        FormulaBoat.Line chine = last();
        double flare = beam * draw(0.03, 0.2);
        double flareForward = beam * draw(0, 0.25);
        double forwardPower = draw(1.5, 3);
        double hump = draw(3, 5);
        double tumblehome = lot.nextInt(4) == 0 ? beam * draw(0.05, 0.2) : 0;
        double hollow = draw(-0.025, 0.09);
        DoubleUnaryOperator low = sheerHeight();
        double under = DoubleStream.of(stations).map(x -> chine.at(x, 1) - low.applyAsDouble(x)).max().orElseThrow();
        double up = Math.max(0, under + 0.25 * depth);
        line(LineKind.SHEER, "Sheer", x -> chine.at(x, 0) + flare * (1 - 0.8 * ahead(x, 0.5, 2.5))
            + flareForward * Math.pow(forward(x), forwardPower) * (1 - Math.pow(forward(x), hump))
            - tumblehome * aft(x, 0.4, 2), x -> low.applyAsDouble(x) + up);
        bulges.add(x -> 0.0125 - hollow * Math.pow(forward(x), 1.5));
    }
}
