package org.garboard.tablefile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/** Gathers what is wrong with one file. */
final class Problems {
    private final String file;
    private final GridKind grid;
    private final List<TableProblem> list = new ArrayList<>();
    private final Set<Long> cells = new HashSet<>();

    /** @param grid how the file names its cells */
    Problems(String file, GridKind grid) {
        this.file = file;
        this.grid = grid;
    }

    void inFile(String reason) {
        list.add(new TableProblem(grid, file, OptionalInt.empty(), OptionalInt.empty(), "", "", reason));
    }

    void inRow(int row, String place, String reason) {
        list.add(new TableProblem(grid, file, OptionalInt.of(row), OptionalInt.empty(), place, "", reason));
    }

    /** What the cell means, "half-breadth", is put before its text. */
    void inCell(Cell cell, String place, String meaning, String reason) {
        cells.add(key(cell));
        String found = meaning.isEmpty() ? cell.quoted() : meaning + " " + cell.quoted();
        list.add(new TableProblem(grid, file, OptionalInt.of(cell.row()), OptionalInt.of(cell.column()), place, found, reason));
    }

    boolean isEmpty() {
        return list.isEmpty();
    }

    /** Whether something has been said of the cell. */
    boolean isKnown(Cell cell) {
        return cells.contains(key(cell));
    }

    private static long key(Cell cell) {
        return ((long) cell.row() << Integer.SIZE) + cell.column();
    }

    /** From the top of the file down. */
    List<TableProblem> inOrder() {
        List<TableProblem> ordered = new ArrayList<>(list);
        ordered.sort(Comparator.<TableProblem>comparingInt(problem -> problem.row().orElse(0))
            .thenComparingInt(problem -> problem.column().orElse(0)));
        return ordered;
    }
}
