package org.garboard.drawing.sheets;

import java.util.List;
import org.garboard.drawing.Scale;
import org.garboard.job.DrawingWish.Units;
import org.garboard.units.Angle;
import org.garboard.units.FeetInches;
import org.garboard.units.FixedDecimal;

/** Lengths and angles as the sheets of a job print them. */
record Figures(Units units) {

    /** To the millimetre; with feet and inches to the eighth behind it where the job asks for them. */
    String length(double metres) {
        return withFeet(FixedDecimal.format(metres * 1000, 0), metres);
    }

    /** To a tenth of a millimetre, noughts left out: for what is built on a bench and not taped on a boat. */
    String fine(double metres) {
        return withFeet(tenths(metres * 1000), metres);
    }

    private String withFeet(String millimetres, double metres) {
        return units == Units.MILLIMETRES ? millimetres : millimetres + " (" + FeetInches.toEighth(metres) + ")";
    }

    /** In the job's unit alone, where there is little room. */
    String brief(double metres) {
        return units == Units.MILLIMETRES ? FixedDecimal.format(metres * 1000, 0) : FeetInches.toEighth(metres);
    }

    static String tenths(double value) {
        String text = FixedDecimal.format(value, 1);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }

    /** Degrees to a tenth from horizontal, and the rise in 1000 of run. */
    static String slope(double radians) {
        return degrees(radians) + ", " + FixedDecimal.format(Math.tan(radians) * 1000, 0) + " in 1000";
    }

    static String degrees(double radians) {
        return FixedDecimal.format(Angle.ofRadians(radians).degrees(), 1) + "°";
    }

    /** For the title block. */
    String note() {
        return units == Units.MILLIMETRES ? "mm; decimal point" : "mm (feet-inches and eighths)";
    }

    /** The scales a yard of these units uses, largest first. */
    List<Scale> scales() {
        return units == Units.MILLIMETRES ? Scale.METRIC : Scale.FEET;
    }
}
