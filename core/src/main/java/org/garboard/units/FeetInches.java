package org.garboard.units;

/** Prints lengths in feet, inches and fractions. */
public final class FeetInches {

    private FeetInches() {
    }

    /** As sheets print what is taped, the fraction reduced: 1.410 m is {@code 4'-7 1/2"}. */
    public static String toEighth(double metres) {
        return nearest(metres, 8);
    }

    /** As sheets print what is built on a bench: 43 mm is {@code 0'-1 11/16"}, 0.15 mm off and not 1.45. */
    public static String toSixteenth(double metres) {
        return nearest(metres, 16);
    }

    private static String nearest(double metres, int parts) {
        requireFinite(metres);
        long count = Math.round(Math.abs(metres) / (LengthUnit.INCH.metres() / parts));
        StringBuilder text = new StringBuilder();
        if (metres < 0 && count > 0) {
            text.append('-');
        }
        text.append(count / (12 * parts)).append("'-").append(count / parts % 12);
        int fraction = (int) (count % parts);
        if (fraction > 0) {
            text.append(' ').append(reduced(fraction, parts));
        }
        return text.append('"').toString();
    }

    /**
     * A tolerance in inches, never more than it is: 4 mm is {@code 1/8"}. By sixteenths, below one by
     * thirty-seconds.
     */
    public static String atMost(double metres) {
        requireFinite(metres);
        double inches = metres / LengthUnit.INCH.metres();
        int parts = inches < 1.0 / 16 ? 32 : 16;
        int count = (int) Math.floor(inches * parts);
        if (count < 1) {
            throw new IllegalArgumentException("a tolerance of " + metres + " m is finer than 1/32 in");
        }
        String whole = count >= parts ? String.valueOf(count / parts) : "";
        String rest = count % parts > 0 ? reduced(count % parts, parts) : "";
        return (whole + " " + rest).strip() + '"';
    }

    private static String reduced(int fraction, int parts) {
        int common = Integer.lowestOneBit(fraction);
        return fraction / common + "/" + parts / common;
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
