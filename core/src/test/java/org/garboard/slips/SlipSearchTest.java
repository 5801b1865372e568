package org.garboard.slips;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.garboard.offsets.Entry;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.Measure;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.Station;
import org.garboard.offsets.TableFaults;
import org.garboard.offsets.TableLine;
import org.garboard.slips.pen.SlipKind;
import org.garboard.slips.pen.Writing;
import org.garboard.units.FeetInches;
import org.garboard.units.Length;
import org.garboard.units.LengthNotation;
import org.garboard.units.LengthUnit;
import org.junit.jupiter.api.Test;

class SlipSearchTest {
    private static final double FOOT = 0.3048;
    private static final double EIGHTH = 0.003175;

    /** Twelve stations 3 ft apart, one chine, 20 degrees of deadrise aft. */
    private static OffsetTable skiff(double step) {
        double[] x = new double[12];
        for (int j = 0; j < x.length; j++) {
            x[j] = 3 * FOOT * j;
        }
        double length = x[11];
        return new FormulaBoat(x, List.of(
            new FormulaBoat.Line(LineKind.KEEL, "Keel", at -> 0, at -> 1.2 * Math.pow(1 - at / length, 4)),
            new FormulaBoat.Line(LineKind.CHINE, "Chine", at -> 0.06 + 1.3 * (1 - Math.pow(1 - at / length, 3.5)),
                at -> 1.2 * Math.pow(1 - at / length, 4) + (0.06 + 1.3 * (1 - Math.pow(1 - at / length, 3.5)))
                    * Math.tan(Math.toRadians(20 + 20 * Math.pow(1 - at / length, 3)))),
            new FormulaBoat.Line(LineKind.SHEER, "Sheer", at -> 0.1 + 1.5 * (1 - Math.pow(1 - at / length, 4)),
                at -> 1.6 + 0.5 * Math.pow(1 - at / length, 2))),
            List.of(at -> 0.01, at -> 0)).table(step, FOOT / 2, 3, 4);
    }

    private static int row(OffsetTable table, LineKind kind, Measure measure) {
        for (int row = 0; row < table.lines().size(); row++) {
            if (table.lines().get(row).kind() == kind && table.lines().get(row).measure() == measure) {
                return row;
            }
        }
        throw new IllegalArgumentException("no row of " + kind);
    }

    private static OffsetTable with(OffsetTable table, int row, int station, double value) {
        return new PlantedSlip(row, station, table.lines().get(row).at(station).orElseThrow(), value, "").in(table);
    }

    private static List<Slip> slips(OffsetTable table, Writing writing) {
        return ((SlipFindings.Searched) SlipSearch.in(table, writing)).slips();
    }

    private static double eighths(String dashed) {
        return ((Length) LengthNotation.unitRequired().read(dashed)).metres();
    }

    @Test
    void exact_aFootInTheKeel() {
        OffsetTable good = skiff(EIGHTH);
        int keel = row(good, LineKind.KEEL, Measure.HEIGHT);
        double was = good.lines().get(keel).at(4).orElseThrow();
        Slip slip = slips(with(good, keel, 4, was + FOOT), new Writing.FeetInchesEighths()).get(0);
        assertEquals(new Slip(keel, 4, was + FOOT, slip.proposed(), FeetInches.dashed(was), SlipKind.FOOT, List.of()), slip);
        assertEquals(was, slip.proposed(), 1e-12);
        assertEquals(FOOT, slip.size(), 1e-12);
        assertTrue(slip.isSure());
    }

    @Test
    void exact_digitsSwappedInAWaterline() {
        OffsetTable good = skiff(EIGHTH);
        int waterline = row(good, LineKind.WATERLINE, Measure.HALF_BREADTH);
        String was = FeetInches.dashed(good.lines().get(waterline).at(8).orElseThrow());
        String swapped = was.charAt(2) + "-" + was.charAt(0) + was.substring(3);
        Slip slip = slips(with(good, waterline, 8, eighths(swapped)), new Writing.FeetInchesEighths()).get(0);
        assertEquals(List.of(waterline, 8, was, SlipKind.SWAPPED_DIGITS),
            List.of(slip.line(), slip.station(), slip.proposal(), slip.kind()));
    }

    @Test
    void exact_theSameSlipsInMillimetresAndInMetres() {
        OffsetTable good = skiff(0.001);
        int sheer = row(good, LineKind.SHEER, Measure.HALF_BREADTH);
        double was = good.lines().get(sheer).at(5).orElseThrow();
        OffsetTable spoilt = with(good, sheer, 5, was * 10);
        Slip inMillimetres = slips(spoilt, new Writing.Decimals(LengthUnit.MILLIMETRE)).get(0);
        Slip inMetres = slips(spoilt, new Writing.Decimals(LengthUnit.METRE)).get(0);
        assertEquals(Math.round(was * 1000) + "", inMillimetres.proposal());
        assertEquals(String.valueOf(was).substring(0, 5), inMetres.proposal());
        assertEquals(inMillimetres.proposed(), inMetres.proposed(), 1e-12);
        assertEquals(List.of(SlipKind.MOVED_POINT, SlipKind.MOVED_POINT), List.of(inMillimetres.kind(), inMetres.kind()));
    }

    @Test
    void theEndsAreLessSure() {
        OffsetTable good = skiff(EIGHTH);
        int chine = row(good, LineKind.CHINE, Measure.HEIGHT);
        double was = good.lines().get(chine).at(11).orElseThrow();
        Slip slip = slips(with(good, chine, 11, was + FOOT), new Writing.FeetInchesEighths()).get(0);
        assertEquals(List.of(Doubt.END_STATION), slip.doubts());
        assertFalse(slip.isSure());
    }

    /** A foot in the chine puts points on its wrong side: the table is refused, and the slip behind it is found. */
    @Test
    void aSlipThatMakesFaultsIsFound() {
        OffsetTable good = skiff(EIGHTH);
        int chine = row(good, LineKind.CHINE, Measure.HALF_BREADTH);
        double was = good.lines().get(chine).at(6).orElseThrow();
        OffsetTable spoilt = with(good, chine, 6, was - FOOT);
        assertFalse(TableFaults.of(spoilt).isEmpty());
        List<Slip> slips = slips(spoilt, new Writing.FeetInchesEighths());
        assertEquals(1, slips.size(), slips.toString());
        assertEquals(List.of(chine, 6, SlipKind.FOOT), List.of(slips.get(0).line(), slips.get(0).station(), slips.get(0).kind()));
    }

    /** A cell that no slip explains is not accused. */
    @Test
    void aValueThatNoSlipExplainsIsLeft() {
        OffsetTable good = skiff(0.001);
        int sheer = row(good, LineKind.SHEER, Measure.HEIGHT);
        double was = good.lines().get(sheer).at(5).orElseThrow();
        assertEquals(List.of(), slips(with(good, sheer, 5, was + 0.0432), new Writing.Decimals(LengthUnit.MILLIMETRE)));
    }

    /** A long table is searched stretch by stretch; a slip counts once, at its own station. */
    @Test
    void law_aLongTableIsSearchedToItsEnds() {
        double[] x = new double[70];
        for (int j = 0; j < x.length; j++) {
            x[j] = 0.25 * j;
        }
        double length = x[69];
        OffsetTable good = new FormulaBoat(x, List.of(
            new FormulaBoat.Line(LineKind.KEEL, "Keel", at -> 0, at -> 1.2 * Math.pow(1 - at / length, 4)),
            new FormulaBoat.Line(LineKind.SHEER, "Sheer", at -> 0.1 + 2 * (1 - Math.pow(1 - at / length, 3)),
                at -> 2 + Math.pow(1 - at / length, 2))), List.of(at -> 0.1)).table(0.001, 0.1, 2, 2);
        Writing writing = new Writing.Decimals(LengthUnit.MILLIMETRE);
        assertEquals(List.of(), slips(good, writing));
        for (int station : new int[] {1, 15, 16, 17, 40, 63, 64, 68}) {
            double was = good.lines().get(0).at(station).orElseThrow();
            List<Slip> slips = slips(with(good, 0, station, was * 10), writing);
            assertEquals(1, slips.size(), slips.toString());
            assertEquals(station, slips.get(0).station());
            assertEquals(was, slips.get(0).proposed(), 1e-9);
        }
    }

    private static SlipFindings search(List<Station> stations, List<TableLine> lines) {
        OffsetTable skiff = skiff(EIGHTH);
        return SlipSearch.in(new OffsetTable("", skiff.surface(), EIGHTH, stations, lines), new Writing.FeetInchesEighths());
    }

    @Test
    void tablesThatTellTooLittleAreNotSearched() {
        OffsetTable good = skiff(EIGHTH);
        List<TableLine> four = good.lines().stream().map(line -> new TableLine(line.kind(), line.name(), line.level(),
            line.measure(), line.entries().stream().filter(entry -> entry.station() < 4).toList())).toList();
        assertEquals(new SlipFindings.NotSearched("the table has 4 stations; 5 are the least"),
            search(good.stations().subList(0, 4), four));
        assertEquals(new SlipFindings.NotSearched("no row gives the sheer"), search(good.stations(),
            good.lines().stream().filter(line -> line.kind() != LineKind.SHEER).toList()));
        assertEquals(new SlipFindings.NotSearched("Chine stands in one block only"), search(good.stations(),
            good.lines().stream().filter(line -> line.kind() != LineKind.CHINE || line.measure() == Measure.HEIGHT).toList()));
        List<Station> turned = new ArrayList<>(good.stations());
        turned.set(3, new Station("3", 0));
        assertEquals(new SlipFindings.NotSearched("the stations are not in order from forward aft"), search(turned, good.lines()));
        List<TableLine> sparse = new ArrayList<>(good.lines());
        int keel = row(good, LineKind.KEEL, Measure.HEIGHT);
        sparse.set(keel, new TableLine(LineKind.KEEL, "Keel", 0, Measure.HEIGHT, good.lines().get(keel).entries().subList(0, 2)));
        assertEquals(new SlipFindings.NotSearched("Keel is given at 2 stations; 5 are the least"), search(good.stations(), sparse));
    }

    @Test
    void tablesThatWouldTakeLongAreNotSearched() {
        OffsetTable good = skiff(EIGHTH);
        List<TableLine> many = new ArrayList<>(good.lines());
        for (int i = 0; i < 40; i++) {
            List<Entry> entries = new ArrayList<>(good.lines().get(row(good, LineKind.CHINE, Measure.HEIGHT)).entries());
            many.add(new TableLine(LineKind.CHINE, "Chine " + i, 0, Measure.HEIGHT, entries));
            many.add(new TableLine(LineKind.CHINE, "Chine " + i, 0, Measure.HALF_BREADTH, entries));
        }
        assertEquals(new SlipFindings.NotSearched("the table has more stations and lines than can be compared in a few seconds"),
            search(good.stations(), many));
    }
}
