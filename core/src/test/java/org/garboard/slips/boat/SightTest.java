package org.garboard.slips.boat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.garboard.offsets.Entry;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.Measure;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.SkinSurface;
import org.garboard.offsets.Station;
import org.garboard.offsets.TableLine;
import org.garboard.slips.fit.Reading;
import org.junit.jupiter.api.Test;

class SightTest {
    private static final int STATIONS = 6;
    private static final double STEP = 1e-5;

    /** Keel at z = 0, chine at (1, 0.3), sheer at (1.3, 1.2), everywhere; a row each cuts bottom and side. */
    private static Rows prism() {
        return new Rows(new OffsetTable("", SkinSurface.OUTSIDE_OF_SKIN, 0.001,
            IntStream.range(0, STATIONS).mapToObj(j -> new Station("" + j, j)).toList(), List.of(
                row(LineKind.KEEL, "Keel", 0, Measure.HEIGHT, 0), row(LineKind.CHINE, "Chine", 0, Measure.HEIGHT, 0.3),
                row(LineKind.SHEER, "Sheer", 0, Measure.HEIGHT, 1.2), row(LineKind.BUTTOCK, "Buttock", 0.5, Measure.HEIGHT, 0.16),
                row(LineKind.CHINE, "Chine", 0, Measure.HALF_BREADTH, 1), row(LineKind.SHEER, "Sheer", 0, Measure.HALF_BREADTH, 1.3),
                row(LineKind.WATERLINE, "WL", 0.9, Measure.HALF_BREADTH, 1.21))));
    }

    private static TableLine row(LineKind kind, String name, double level, Measure measure, double value) {
        List<Entry> entries = new ArrayList<>();
        for (int j = 0; j < STATIONS; j++) {
            entries.add(new Entry(j, value));
        }
        return new TableLine(kind, name, level, measure, entries);
    }

    private static Skin skin(Rows rows) {
        double[][] named = new double[rows.namedColumns()][STATIONS];
        for (Cell cell : rows.cells()) {
            if (rows.columnOf(cell) >= 0) {
                named[rows.columnOf(cell)][cell.station()] = cell.written();
            }
        }
        return new Skin(rows, named, new int[] {1, 1});
    }

    /** Poles all along a column alike: a prism. */
    private static double[] solution(Rows rows, Skin skin) {
        double[] solution = new double[skin.net().size()];
        for (Cell cell : rows.cells()) {
            if (rows.columnOf(cell) >= 0) {
                for (int i = 0; i < rows.along().functions(); i++) {
                    solution[skin.net().unknown(i, rows.columnOf(cell))] = cell.written();
                }
            }
        }
        return solution;
    }

    private static double reading(Rows rows, Skin skin, Cell cell) {
        Skin.Place place = skin.crossing(rows.row(cell), cell.station(), cell.written()).orElseThrow();
        return skin.at(place.panel(), cell.station(), place.v(), 1 - Skin.levelOf(rows.row(cell)));
    }

    /** The buttock lies half way up the bottom, 0.15 high; the waterline two thirds up the side, 1.2 out. */
    @Test
    void exact_whatIsForetoldOfAPrism() {
        Rows rows = prism();
        Skin skin = skin(rows);
        double[] solution = solution(rows, skin);
        skin.take(solution);
        for (Cell cell : rows.cells()) {
            if (rows.isPoint(cell)) {
                Reading reading = new Sight(rows, skin).atLevel(cell).orElseThrow();
                double given = cell.written() - (reading.value() - reading.of(skin.net(), solution));
                assertEquals(rows.row(cell).kind() == LineKind.BUTTOCK ? 0.15 : 1.2, given, 1e-9);
            }
        }
    }

    /** A reading is linear in the skin near it: every column moves it as it moves the skin's own crossing. */
    @Test
    void law_readingsMoveWithTheSkin() {
        Rows rows = prism();
        Skin skin = skin(rows);
        double[] solution = solution(rows, skin);
        int columns = skin.net().size() / rows.along().functions();
        for (Cell cell : rows.cells()) {
            for (int column = 0; column < columns && rows.isPoint(cell); column++) {
                skin.take(solution);
                Reading reading = new Sight(rows, skin).atLevel(cell).orElseThrow();
                double before = reading(rows, skin, cell);
                double[] moved = solution.clone();
                for (int i = 0; i < rows.along().functions(); i++) {
                    moved[skin.net().unknown(i, column)] += STEP;
                }
                skin.take(moved);
                assertEquals(reading(rows, skin, cell) - before,
                    reading.of(skin.net(), moved) - reading.of(skin.net(), solution), 1e-4 * STEP, cell + " column " + column);
            }
        }
    }
}
