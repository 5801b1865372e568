package org.garboard.tablefile;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.garboard.units.LengthUnit;

/**
 * Writes the table of a stepped boat in millimetres, stations in rows: a station at a step stands twice, as the
 * forward face and as the after one.
 */
final class SteppedTable {
    private static final double FOOT_MM = LengthUnit.FOOT.metres() * 1000;
    private static final int[] BUTTOCKS = {300, 600, 900, 1200};
    private static final int[] WATERLINES = {900, 1100, 1300};
    /** Stations [mm] of each length; a length begins where the one before ends. */
    private static final int[][] STATIONS = {
        {0, 450, 900, 1800, 2700, 3600, 4500, 5200, 6000, 6860}, {6860, 7400, 8000, 8600, 9140}, {9140, 9740, 10340, 10960, 11580}};

    private final List<String> heights = new ArrayList<>();
    private final List<String> halfBreadths = new ArrayList<>();
    private int named;

    static String stepped38() {
        return new SteppedTable().write();
    }

    private String write() {
        for (int length = 0; length < STATIONS.length; length++) {
            VBottomBoat boat = VBottomBoat.stepped38(length);
            for (int i = 0; i < STATIONS[length].length; i++) {
                boolean after = length > 0 && i == 0;
                String name = after ? named - 1 + " aft" : String.valueOf(named++);
                station(boat, name, STATIONS[length][i]);
            }
        }
        return "TABLE OF OFFSETS,Stepped 38\nUnits,mm,to outside of skin\n"
            + "Note,an invented boat; its lines are simple formulas rounded to the millimetre\n"
            + "Step at,13,Keel,9300,Chine,9000\n"
            + "Transom,Keel,11580,Chine,11690,Sheer,11880\n"
            + "HEIGHTS ABOVE BASE\n"
            + "Station,Distance from 0,Sheer,Chine" + levels(",Buttock ", BUTTOCKS) + ",Keel\n" + String.join("", heights)
            + "HALF-BREADTHS FROM CENTRELINE\n"
            + "Station,Sheer,Chine" + levels(",WL ", WATERLINES) + "\n" + String.join("", halfBreadths);
    }

    private static String levels(String word, int[] levels) {
        StringBuilder text = new StringBuilder();
        for (int level : levels) {
            text.append(word).append(level);
        }
        return text.toString();
    }

    private void station(VBottomBoat boat, String name, int distance) {
        double x = distance / FOOT_MM;
        StringBuilder up = new StringBuilder(name + "," + distance + cell(boat.heightOfSheer(x)) + cell(boat.chineHeight(x)));
        for (int buttock : BUTTOCKS) {
            up.append(cell(boat.height(x, buttock / FOOT_MM)));
        }
        heights.add(up + cell(boat.keelHeight(x)) + "\n");
        StringBuilder out = new StringBuilder(name + cell(boat.sheerHalfBreadth(x)) + cell(boat.chineHalfBreadth(x)));
        for (int waterline : WATERLINES) {
            out.append(cell(boat.halfBreadth(x, waterline / FOOT_MM)));
        }
        halfBreadths.add(out + "\n");
    }

    private static String cell(OptionalDouble feet) {
        return feet.isPresent() ? cell(feet.getAsDouble()) : ",";
    }

    private static String cell(double feet) {
        return String.format(Locale.ROOT, ",%d", Math.round(feet * FOOT_MM));
    }
}
