package org.garboard.slips;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.garboard.offsets.Entry;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.Station;
import org.garboard.offsets.TableLine;
import org.junit.jupiter.api.Test;

/** Whatever stands in a table, the search comes to an end, and what it proposes is finite. */
class WildTablesTest {
    private static final int TABLES = 40;

    @Test
    void law_noTableBreaksTheSearch() {
        int searched = 0;
        for (int number = 0; number < TABLES; number++) {
            OffsetTable table = spoilt(number);
            SlipFindings findings = SlipSearch.in(table, BoatLot.Hand.of(number).writing);
            if (findings instanceof SlipFindings.Searched found) {
                searched++;
                for (Slip slip : found.slips()) {
                    assertTrue(Double.isFinite(slip.proposed()) && slip.proposed() != slip.written(), slip.toString());
                }
            }
        }
        assertTrue(searched > 0 && searched < TABLES, searched + " searched");
    }

    /** From a few cells spoilt to nothing but chance. */
    private static OffsetTable spoilt(int number) {
        Random lot = new Random(number);
        OffsetTable good = BoatLot.table(number);
        double share = (double) number / TABLES;
        List<TableLine> lines = new ArrayList<>();
        for (TableLine line : good.lines()) {
            List<Entry> entries = new ArrayList<>();
            for (Entry entry : line.entries()) {
                if (lot.nextDouble() >= 0.2 * share) {
                    double value = lot.nextDouble() < share ? wild(lot, entry.value()) : entry.value();
                    entries.add(new Entry(entry.station(), value));
                }
            }
            lines.add(new TableLine(line.kind(), line.name(), line.level(), line.measure(), entries));
        }
        List<Station> stations = new ArrayList<>();
        for (Station station : good.stations()) {
            stations.add(new Station(station.name(), number % 3 == 0 ? station.x() * station.x() : station.x()));
        }
        return new OffsetTable("", good.surface(), good.leastCount(), stations, lines);
    }

    private static double wild(Random lot, double value) {
        return switch (lot.nextInt(6)) {
            case 0 -> 0;
            case 1 -> value * 1e6;
            case 2 -> -value;
            case 3 -> lot.nextGaussian();
            case 4 -> 1e-9 * lot.nextInt(1000);
            default -> 1.5;
        };
    }
}
