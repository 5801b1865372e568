package org.garboard.slips;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.garboard.offsets.Entry;
import org.garboard.offsets.Measure;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.TableLine;
import org.garboard.slips.pen.Writing;
import org.garboard.units.FeetInches;
import org.garboard.units.FixedDecimal;
import org.garboard.units.Length;
import org.garboard.units.LengthNotation;
import org.garboard.units.LengthUnit;

/** A slip made on purpose in the text of one cell. */
record PlantedSlip(int row, int station, double was, double is, String kind) {
    private static final double INCH = 0.0254;

    /** What the pen could do to a cell, each with its name. */
    private record Change(String kind, double value) {
    }

    /** Draws a cell, then a kind of slip that moves it by so much at least, then one such slip. */
    static PlantedSlip draw(OffsetTable table, Writing writing, Random lot, double least) {
        while (true) {
            int row = lot.nextInt(table.lines().size());
            TableLine line = table.lines().get(row);
            if (line.entries().isEmpty()) {
                continue;
            }
            Entry entry = line.entries().get(lot.nextInt(line.entries().size()));
            List<Change> changes = changes(entry.value(), writing, table.leastCount());
            changes.removeIf(change -> Math.abs(change.value - entry.value()) < least
                || change.value < 0 && line.measure() == Measure.HALF_BREADTH);
            List<String> kinds = changes.stream().map(Change::kind).distinct().toList();
            if (!kinds.isEmpty()) {
                String kind = kinds.get(lot.nextInt(kinds.size()));
                List<Change> alike = changes.stream().filter(change -> change.kind.equals(kind)).toList();
                double value = alike.get(lot.nextInt(alike.size())).value;
                return new PlantedSlip(row, entry.station(), entry.value(), value, kind);
            }
        }
    }

    private static List<Change> changes(double value, Writing writing, double step) {
        List<Change> changes = new ArrayList<>();
        if (writing instanceof Writing.FeetInchesEighths) {
            for (int way = -1; way <= 1; way += 2) {
                changes.add(new Change("a foot", value + way * 12 * INCH));
                changes.add(new Change("an inch", value + way * INCH));
                for (int eighths = 1; eighths < 8; eighths++) {
                    changes.add(new Change("eighths", value + way * eighths * INCH / 8));
                }
            }
            swapped(FeetInches.dashed(value), LengthNotation.unitRequired(), changes);
        } else {
            LengthUnit unit = ((Writing.Decimals) writing).unit();
            int places = (int) Math.round(Math.log10(unit.metres() / step));
            swapped(FixedDecimal.format(value / unit.metres(), places), LengthNotation.in(unit), changes);
            for (double factor : new double[] {0.01, 0.1, 10, 100}) {
                changes.add(new Change("moved point", value * factor));
            }
            for (int way = -1; way <= 1 && (unit == LengthUnit.FOOT || unit == LengthUnit.INCH); way += 2) {
                changes.add(new Change("a foot", value + way * 12 * INCH));
                if (unit == LengthUnit.INCH) {
                    changes.add(new Change("an inch", value + way * INCH));
                }
            }
        }
        return changes;
    }

    private static void swapped(String text, LengthNotation notation, List<Change> changes) {
        for (int i = text.startsWith("-") ? 1 : 0; i + 1 < text.length(); i++) {
            int next = Character.isDigit(text.charAt(i + 1)) ? i + 1 : i + 2;
            if (Character.isDigit(text.charAt(i)) && next < text.length() && text.charAt(i) != text.charAt(next)) {
                StringBuilder spoilt = new StringBuilder(text);
                spoilt.setCharAt(i, text.charAt(next));
                spoilt.setCharAt(next, text.charAt(i));
                notation.read(spoilt.toString()).length().map(Length::metres)
                    .ifPresent(metres -> changes.add(new Change("swapped digits", metres)));
            }
        }
    }

    /** Whether some slip makes one value of the other. */
    static boolean couldSpoil(double good, double spoilt, BoatLot.Hand hand) {
        return changes(good, hand.writing, hand.step).stream().anyMatch(change -> Math.abs(change.value - spoilt) < 1e-9);
    }

    boolean isInCellOf(PlantedSlip other) {
        return row == other.row && station == other.station;
    }

    boolean isAtEnd(OffsetTable table) {
        return station == 0 || station == table.stations().size() - 1;
    }

    boolean isAt(Slip slip) {
        return slip.line() == row && slip.station() == station;
    }

    OffsetTable in(OffsetTable table) {
        List<TableLine> lines = new ArrayList<>(table.lines());
        TableLine line = lines.get(row);
        List<Entry> entries = line.entries().stream()
            .map(entry -> entry.station() == station ? new Entry(station, is) : entry).toList();
        lines.set(row, new TableLine(line.kind(), line.name(), line.level(), line.measure(), entries));
        return new OffsetTable(table.title(), table.surface(), table.leastCount(), table.stations(), lines);
    }
}
