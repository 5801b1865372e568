package org.garboard.units;

/** Prints lengths in feet and inches, to the nearest eighth of an inch. */
public final class FeetInches {

    private FeetInches() {
    }

    /** As sheets print it, the fraction reduced: 1.410 m is {@code 4'-7 1/2"}. */
    public static String toEighth(double metres) {
        requireFinite(metres);
        long eighths = Math.round(Math.abs(metres) / (LengthUnit.INCH.metres() / 8));
        StringBuilder text = new StringBuilder();
        if (metres < 0 && eighths > 0) {
            text.append('-');
        }
        text.append(eighths / 96).append("'-").append(eighths / 8 % 12);
        int fraction = (int) (eighths % 8);
        if (fraction > 0) {
            int common = Integer.lowestOneBit(fraction);
            text.append(' ').append(fraction / common).append('/').append(8 / common);
        }
        return text.append('"').toString();
    }

    /** As tables of offsets print it, feet-inches-eighths: 1.410 m is {@code 4-7-4}. */
    public static String dashed(double metres) {
        requireFinite(metres);
        return FeetInchesEighths.print(metres);
    }

    private static void requireFinite(double metres) {
        if (!Double.isFinite(metres)) {
            throw new IllegalArgumentException("length " + metres + " m cannot be printed");
        }
    }
}
