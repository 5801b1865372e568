package org.garboard.tablefile;

import java.util.Locale;
import java.util.function.DoubleFunction;

/**
 * The displacement boat as a yard measures her: blocked with a trim and a heel of her own, read to the millimetre at
 * plumb stations from just abaft the stem to the tuck, up to a ribband on the topsides. Heights are taken from the
 * blocked boat outward: turned by heel, then by trim, then laid beside the stretched line.
 */
final class DisplacementTakeOff {
    static final double TRIM_DEGREES = 0.85;
    static final double HEEL_DEGREES = -1.3;
    /** How far up the skin was measured, and where she floats, in her own frame [m]. */
    static final double RIBBAND = 1.42;
    static final double LOAD_WATERLINE = 1.05;

    /** The heel of the sternpost, on the bottom of the keel. */
    private static final double DATUM = DisplacementBoat.STERNPOST;
    private static final double LINE_BESIDE = 0.012;
    private static final double LINE_BELOW = 0.55;
    private static final double[] PLANES = {6.7, 5.9, 5.0, 4.0, 3.0, 2.0, 1.2, 0.5, 0, -0.35};
    private static final double[] SHARES = {0.1, 0.22, 0.36, 0.52, 0.68, 0.84};
    private static final int CHALKED = 3;

    private final double trim = Math.toRadians(TRIM_DEGREES);
    private final double heel = Math.toRadians(HEEL_DEGREES);
    private final double[] datum = blocked(DATUM, 0, DisplacementBoat.keelBottom(DATUM));
    private final StringBuilder csv = new StringBuilder();

    static String text() {
        return new DisplacementTakeOff().write();
    }

    private String write() {
        csv.append("TAKE-OFF,Displacement 30\n")
            .append("Units,mm,to outside of planking\n")
            .append("Note,an invented boat; her lines are simple formulas read to the millimetre as she stands blocked\n")
            .append("Datum,heel of the sternpost,").append(millimetres(datum[2])).append('\n')
            .append("Distances,forward of datum\n")
            .append("Trim from,float marks,load waterline,").append(millimetres(LOAD_WATERLINE)).append('\n')
            .append("Station,Distance,Side,Mark,Out,Height\n");
        for (int j = 0; j < PLANES.length; j++) {
            station(String.valueOf(j + 1), PLANES[j]);
        }
        for (double x : new double[] {2.2, 7.4}) {
            for (int side : new int[] {-1, 1}) {
                double[] at = blocked(x, side * DisplacementBoat.halfBreadth(x, LOAD_WATERLINE), LOAD_WATERLINE);
                csv.append(',').append(millimetres(datum[0] - at[0])).append(side < 0 ? ",port" : ",starboard").append(",float,")
                    .append(millimetres(Math.abs(at[1]))).append(',').append(millimetres(at[2])).append('\n');
            }
        }
        return csv.toString();
    }

    private void station(String name, double plane) {
        String place = name + "," + millimetres(plane);
        for (int side : new int[] {-1, 1}) {
            place = row(place, plane, side, "Rabbet", x -> new double[] {x, DisplacementBoat.siding(x), DisplacementBoat.rabbet(x)}, name);
        }
        if (plane >= 0) {
            for (int side : new int[] {-1, 1}) {
                row(name + ",", plane, side, "Keel bottom", x -> new double[] {x, bottomSiding(x), keelBottom(x)}, name);
            }
        }
        for (int side : new int[] {-1, 1}) {
            for (int i = 0; i < SHARES.length; i++) {
                double share = SHARES[i];
                row(name + ",", plane, side, i == CHALKED ? "P1" : "", x -> onSkin(x, share), name);
            }
            row(name + ",", plane, side, "edge", x -> onSkin(x, 1), name);
        }
    }

    private String row(String place, double plane, int side, String mark, DoubleFunction<double[]> line, String name) {
        double[] at = cut(plane, x -> {
            double[] own = line.apply(x);
            return blocked(own[0], side * own[1], own[2]);
        });
        csv.append(place).append(side < 0 ? ",port," : ",starboard,").append(mark).append(',').append(millimetres(Math.abs(at[1])))
            .append(',').append(millimetres(at[2])).append('\n');
        return name + ",";
    }

    /** Past its ends the keel is drawn on, to find where a plumb plane cuts it. */
    private static double keelBottom(double x) {
        double last = DisplacementBoat.keelBottom(DATUM);
        double before = DisplacementBoat.keelBottom(DATUM - 1);
        return x > DATUM ? last + (last - before) * (x - DATUM) : DisplacementBoat.keelBottom(Math.max(DisplacementBoat.KEEL_FROM, x));
    }

    private static double bottomSiding(double x) {
        return DisplacementBoat.keelBottomSiding(Math.max(DisplacementBoat.KEEL_FROM, Math.min(DATUM, x)));
    }

    /** At a share of the way from the rabbet out to the ribband. */
    private static double[] onSkin(double x, double share) {
        double ribband = DisplacementBoat.halfBreadth(x, RIBBAND);
        double y = DisplacementBoat.siding(x) + share * (ribband - DisplacementBoat.siding(x));
        return new double[] {x, y, share == 1 ? RIBBAND : DisplacementBoat.height(x, y)};
    }

    /** Where a line goes through the plumb plane that stands so far ahead of the datum. */
    private double[] cut(double ahead, DoubleFunction<double[]> line) {
        double low = 0.6;
        double high = 9;
        for (int i = 0; i < 100; i++) {
            double middle = 0.5 * (low + high);
            if (datum[0] - line.apply(middle)[0] > ahead) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return line.apply(low);
    }

    /** {x, y, z} as blocked of a place in her own frame. */
    private double[] blocked(double x, double y, double z) {
        double across = y * Math.cos(heel) + z * Math.sin(heel);
        double up = z * Math.cos(heel) - y * Math.sin(heel);
        return new double[] {x * Math.cos(trim) + up * Math.sin(trim), across + LINE_BESIDE,
            up * Math.cos(trim) - x * Math.sin(trim) + LINE_BELOW};
    }

    private static String millimetres(double metres) {
        return String.format(Locale.ROOT, "%d", Math.round(metres * 1000));
    }
}
