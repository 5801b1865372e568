package org.garboard.drawing.sheets;

import java.util.List;
import java.util.stream.Stream;
import org.garboard.drawing.Scale;
import org.garboard.job.DrawingWish.Units;
import org.garboard.units.Angle;
import org.garboard.units.FeetInches;
import org.garboard.units.FixedDecimal;

/** Lengths and angles as the sheets of a job print them. */
public record Figures(Units units) {

    /** What is taped on a boat: to the millimetre, and to the eighth of an inch where the job is in feet. */
    public String length(double metres) {
        return withFeet(whole(metres), FeetInches.toEighth(metres));
    }

    /** A length that is taped, and how far off it may be [mm]: "845 ±4 (2'-9 1/4" ±1/8")". */
    public String length(double metres, double withinMm) {
        return withFeet(whole(metres) + plusMinus(withinMm), FeetInches.toEighth(metres) + plusMinusInches(withinMm));
    }

    /** What follows from other figures and is built on a bench: to the millimetre, or the sixteenth. */
    public String bench(double metres) {
        return withFeet(whole(metres), FeetInches.toSixteenth(metres));
    }

    /** What is asked for and built on a bench: to a tenth of a millimetre, noughts left out, or the sixteenth. */
    public String fine(double metres) {
        return withFeet(tenths(metres * 1000), FeetInches.toSixteenth(metres));
    }

    /** How far off something may be [mm]. */
    public String within(double withinMm) {
        return withFeet(plusMinus(withinMm).strip(), plusMinusInches(withinMm).strip());
    }

    /** By how much something may be larger, never smaller [mm]. */
    public String upTo(double overMm) {
        return withFeet("+" + FixedDecimal.format(overMm, 0) + "/0", "+" + FeetInches.atMost(overMm / 1000) + "/0");
    }

    private static String whole(double metres) {
        return FixedDecimal.format(metres * 1000, 0);
    }

    private static String plusMinus(double withinMm) {
        return " ±" + FixedDecimal.format(withinMm, 0);
    }

    private static String plusMinusInches(double withinMm) {
        return " ±" + FeetInches.atMost(withinMm / 1000);
    }

    private String withFeet(String millimetres, String feet) {
        return units == Units.MILLIMETRES ? millimetres : millimetres + " (" + feet + ")";
    }

    /** In the job's unit alone, where there is little room. */
    public String brief(double metres) {
        return units == Units.MILLIMETRES ? whole(metres) : FeetInches.toEighth(metres);
    }

    /** Where a station stands: no sheet for the shop has a minus sign, so what lies the other way is said in words. */
    public String aftOfOrigin(double metres) {
        return metres < 0 ? brief(-metres) + " fwd" : brief(metres);
    }

    public static String tenths(double value) {
        String text = FixedDecimal.format(value, 1);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }

    /** Degrees to a tenth from horizontal, and the rise in 1000 of run. */
    public static String slope(double radians) {
        return degrees(radians) + ", " + FixedDecimal.format(Math.tan(radians) * 1000, 0) + " in 1000";
    }

    public static String degrees(double radians) {
        return FixedDecimal.format(Angle.ofRadians(radians).degrees(), 1) + "°";
    }

    /** For the title block. */
    public String note() {
        return units == Units.MILLIMETRES ? "mm; decimal point" : "mm (feet-inches, 1/8 or 1/16)";
    }

    /** The same, and one smaller, which serves where nothing else can. */
    public List<Scale> scalesToTheLast() {
        return Stream.concat(scales().stream(), Stream.of(new Scale(units == Units.MILLIMETRES ? 200 : 192))).toList();
    }

    /** The scales a yard of these units uses, largest first. */
    public List<Scale> scales() {
        return units == Units.MILLIMETRES ? Scale.METRIC : Scale.FEET;
    }
}
