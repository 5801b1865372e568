package org.garboard.findingsfile;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import org.garboard.units.LengthNotation;
import org.garboard.units.LengthUnit;

/**
 * The row of headings: which column tells what, and in which unit.
 *
 * @param places index of each column, from 0
 * @param notations how the lengths of a column are read
 * @param count of cells in the row
 */
record Headings(Map<Column, Integer> places, Map<Column, LengthNotation> notations, int count) {

    static Headings of(String file, int row, CSVRecord record, List<FindingsFault> faults) {
        Headings read = new Headings(new EnumMap<>(Column.class), new EnumMap<>(Column.class), record.size());
        for (int i = 0; i < record.size(); i++) {
            String heading = record.get(i).strip();
            if (!heading.isEmpty()) {
                String fault = read.take(i, heading);
                if (!fault.isEmpty()) {
                    faults.add(new FindingsFault(file, row, i + 1, "heading " + Quoted.of(heading) + " " + fault));
                }
            }
        }
        for (Column column : new Column[] {Column.NUMBER, Column.FINDING}) {
            if (!read.places.containsKey(column)) {
                faults.add(new FindingsFault(file, row, 0, "no heading \"" + column.heading() + "\"; every finding has a number and words"));
            }
        }
        return read;
    }

    /** Takes a heading, or says what is wrong with it. */
    private String take(int index, String heading) {
        Optional<Column> plain = Column.of(heading);
        Optional<Column> column = plain.or(() -> Column.before(heading));
        if (column.isEmpty()) {
            return "is not known; write one of: " + Column.words() + "; behind a length its unit";
        }
        if (places.containsKey(column.get())) {
            return "stands there twice; leave one out";
        }
        places.put(column.get(), index);
        notations.put(column.get(), LengthNotation.unitRequired());
        if (plain.isEmpty()) {
            String unit = column.get().behind(heading);
            Optional<LengthUnit> known = LengthUnit.ofSymbol(unit);
            if (known.isEmpty()) {
                return "ends in the unit " + Quoted.of(unit) + ", which is not known; write m, mm, cm, ft or in, or none and a unit in every cell";
            }
            notations.put(column.get(), LengthNotation.in(known.get()));
        }
        return "";
    }
}
