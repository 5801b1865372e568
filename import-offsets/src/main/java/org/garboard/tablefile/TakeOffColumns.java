package org.garboard.tablefile;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Which column of a take-off's list holds what, by the words of its first row. */
final class TakeOffColumns {
    /** The columns. */
    enum Column {
        STATION("sta(?:tion)?s?\\.?(?: no\\.?| number)?", "Station"),
        DISTANCE("distances?.*|x", "Distance"),
        SIDE("sides?.*", "Side"),
        MARK("marks?.*|points?.*", "Mark"),
        OUT("out\\b.*|half-?breadths?.*|y", "Out"),
        HEIGHT("heights?.*|up\\b.*|z", "Height"),
        NOTE("notes?.*|remarks?.*", "Notes");

        private final Pattern words;
        private final String word;

        Column(String words, String word) {
            this.words = Pattern.compile(words, Pattern.CASE_INSENSITIVE);
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    private final Map<Column, Integer> places = new LinkedHashMap<>();

    /** Reads the first row of the list; columns that are missing or unknown are problems. */
    TakeOffColumns(GridRow first, Problems problems) {
        for (int i = 0; i < first.cells().size(); i++) {
            Cell cell = first.at(i);
            Optional<Column> column = of(cell.text());
            if (column.isEmpty() && !cell.isEmpty()) {
                problems.inCell(cell, "", "", "names no column of a take-off; they are Station, Distance, Side, Mark, Out, Height, Notes");
            } else if (column.isPresent() && places.putIfAbsent(column.get(), i) != null) {
                problems.inCell(cell, "", "", "names its column a second time");
            }
        }
        for (Column column : Column.values()) {
            if (column != Column.NOTE && !places.containsKey(column)) {
                problems.inRow(first.number(), "", "the list has no column " + column.word()
                    + "; it needs Station, Distance, Side, Mark, Out, Height");
            }
        }
    }

    private static Optional<Column> of(String text) {
        for (Column column : Column.values()) {
            if (column.words.matcher(text).matches()) {
                return Optional.of(column);
            }
        }
        return Optional.empty();
    }

    /** Whether the row's words are those of a take-off's list: no other table has sides and marks. */
    static boolean isFirstRow(GridRow row) {
        return Labels.isStation(row.first().text())
            && row.cells().stream().anyMatch(cell -> Column.SIDE.words.matcher(cell.text()).matches())
            && row.cells().stream().anyMatch(cell -> Column.HEIGHT.words.matcher(cell.text()).matches());
    }

    /** Whether a row that begins with "Station" heads any other column that a take-off needs. */
    static boolean namesAny(GridRow row) {
        return row.cells().stream().skip(1).map(Cell::text).map(TakeOffColumns::of).flatMap(Optional::stream)
            .anyMatch(column -> column != Column.STATION && column != Column.NOTE);
    }

    /** The cell of a row in a column; an empty one where the column is missing. */
    Cell cell(GridRow row, Column column) {
        return places.containsKey(column) ? row.at(places.get(column)) : new Cell(row.number(), 1, "");
    }

    /** The first filled cell of a row that stands in no column. */
    Optional<Cell> beyond(GridRow row) {
        return row.cells().stream().filter(cell -> !cell.isEmpty() && !places.containsValue(cell.column() - 1)).findFirst();
    }
}
