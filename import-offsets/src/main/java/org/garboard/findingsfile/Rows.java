package org.garboard.findingsfile;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.apache.commons.csv.CSVRecord;
import org.garboard.survey.SurveyFinding;
import org.garboard.survey.SurveyPlace;
import org.garboard.survey.SurveyPlace.Along;
import org.garboard.survey.SurveyPlace.Out;
import org.garboard.survey.SurveyPlace.Side;
import org.garboard.units.LengthReading;

/** Reads rows below the headings, each a finding. */
final class Rows {
    /** Our choice: it stands in a balloon. */
    private static final int LONGEST_NUMBER = 4;
    /** Our choice: some ten lines of the schedule. */
    private static final int LONGEST_FINDING = 600;
    private static final int LONGEST = 200;

    private final String file;
    private final Headings headings;
    private final List<FindingsFault> faults;
    private final Map<String, Integer> numbers = new HashMap<>();
    private CSVRecord record;
    private int row;

    Rows(String file, Headings headings, List<FindingsFault> faults) {
        this.file = file;
        this.headings = headings;
        this.faults = faults;
    }

    /** The finding of a row; none where something in it is at fault. */
    Optional<WrittenFinding> read(int line, CSVRecord cells) {
        row = line;
        record = cells;
        int before = faults.size();
        refuseControls();
        if (faults.size() > before) {
            return Optional.empty();
        }
        refuseSurplus();
        String number = number();
        SurveyPlace place = place();
        SurveyFinding finding = new SurveyFinding(number, place, needed(Column.FINDING, LONGEST_FINDING), text(Column.SEVERITY, LONGEST),
            text(Column.ACTION, LONGEST_FINDING), text(Column.PHOTO, LONGEST), date());
        return faults.size() > before ? Optional.empty()
            : Optional.of(new WrittenFinding(finding, told(Column.STATION, Column.X, Column.AHEAD),
                told(Column.REGION, Column.GIRTH, Column.OFF_CENTRE), told(Column.SIDE)));
    }

    /** Signs that act on a terminal or break XML; line ends and tabs count as blanks. */
    private void refuseControls() {
        for (int i = 0; i < record.size(); i++) {
            OptionalInt bad = record.get(i).codePoints().filter(letter -> "\t\r\n".indexOf(letter) < 0)
                .filter(letter -> Character.getType(letter) == Character.CONTROL || letter == 0xFFFE || letter == 0xFFFF).findFirst();
            if (bad.isPresent()) {
                faults.add(new FindingsFault(file, row, i + 1, Quoted.of(record.get(i)) + " holds the control character "
                    + String.format(Locale.ROOT, "U+%04X", bad.getAsInt()) + "; type the cell anew"));
            }
        }
    }

    private void refuseSurplus() {
        for (int i = headings.count(); i < record.size(); i++) {
            if (!record.get(i).isBlank()) {
                faults.add(new FindingsFault(file, row, i + 1, Quoted.of(record.get(i))
                    + " stands beyond the last heading; quote a cell that holds the mark between cells, and head every column"));
                return;
            }
        }
    }

    private String number() {
        String number = needed(Column.NUMBER, LONGEST_NUMBER);
        Integer earlier = number.isEmpty() ? null : numbers.putIfAbsent(number.toUpperCase(Locale.ROOT), row);
        if (earlier != null) {
            fault(Column.NUMBER, number, "is the number of line " + earlier + " too; give each finding its own");
        }
        return number;
    }

    private SurveyPlace place() {
        Optional<Side> side = side();
        OptionalDouble x = length(Column.X);
        OptionalDouble ahead = length(Column.AHEAD);
        OptionalDouble girth = positive(Column.GIRTH);
        OptionalDouble off = positive(Column.OFF_CENTRE);
        String station = text(Column.STATION, LONGEST);
        String region = text(Column.REGION, LONGEST);
        one("how far along the boat", Column.STATION, Column.X, Column.AHEAD);
        one("how far out", Column.REGION, Column.GIRTH, Column.OFF_CENTRE);
        Optional<Along> along = station.isEmpty() ? x.isPresent() ? Optional.of(new SurveyPlace.AftOfOrigin(x.getAsDouble()))
            : ahead.stream().mapToObj(metres -> (Along) new SurveyPlace.AheadOfAfterEnd(metres)).findFirst()
            : Optional.of(new SurveyPlace.AtStation(station));
        boolean alongTold = anyTold(Column.STATION, Column.X, Column.AHEAD);
        boolean outTold = anyTold(Column.REGION, Column.GIRTH, Column.OFF_CENTRE);
        if (!alongTold && !outTold) {
            faults.add(new FindingsFault(file, row, 0, "no place is told; write a station and a girth, a distance and a side, or a region"));
        } else if (!alongTold && region.isEmpty()) {
            faults.add(new FindingsFault(file, row, 0, "the place is told across the boat and not along it; write a station or a distance as well"));
        } else if (!outTold && text(Column.SIDE).isEmpty()) {
            faults.add(new FindingsFault(file, row, 0,
                "the place is told along the boat alone; write how far out on which side, the side at least, or a region"));
        }
        return new SurveyPlace(along, out(region, girth, off), side);
    }

    private static Out out(String region, OptionalDouble girth, OptionalDouble off) {
        if (!region.isEmpty()) {
            return new SurveyPlace.InRegion(region);
        }
        if (girth.isPresent()) {
            return new SurveyPlace.Girth(girth.getAsDouble());
        }
        return off.isPresent() ? new SurveyPlace.HalfBreadth(off.getAsDouble()) : new SurveyPlace.NotTold();
    }

    private void one(String what, Column... columns) {
        Column first = null;
        for (Column column : columns) {
            if (!text(column).isEmpty() && first != null) {
                fault(column, text(column), "tells " + what + ", and so does " + first.heading() + "; leave one of them out");
            } else if (!text(column).isEmpty()) {
                first = column;
            }
        }
    }

    private boolean anyTold(Column... columns) {
        for (Column column : columns) {
            if (!text(column).isEmpty()) {
                return true;
            }
        }
        return false;
    }

    private Optional<Side> side() {
        String word = text(Column.SIDE);
        switch (word.toLowerCase(Locale.ROOT)) {
            case "port", "p":
                return Optional.of(Side.PORT);
            case "starboard", "stbd", "s":
                return Optional.of(Side.STARBOARD);
            case "both", "both sides":
                return Optional.of(Side.BOTH);
            case "", "centreline":
                return Optional.empty();
            default:
                fault(Column.SIDE, word, "is no side; write port, starboard, both or centreline");
                return Optional.empty();
        }
    }

    private OptionalDouble length(Column column) {
        String text = text(column);
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        LengthReading reading = headings.notations().get(column).read(text);
        if (reading instanceof LengthReading.Unreadable unreadable) {
            fault(column, text, unreadable.reason());
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(reading.length().orElseThrow().metres());
    }

    private OptionalDouble positive(Column column) {
        OptionalDouble length = length(column);
        if (length.isPresent() && length.getAsDouble() < 0) {
            fault(column, text(column), "is negative; write it without a sign, and port or starboard as the side");
        }
        return length;
    }

    private String date() {
        String text = text(Column.DATE);
        if (!text.isEmpty()) {
            try {
                if (!text.matches("[0-9]{4}-[0-9]{2}-[0-9]{2}")) {
                    throw new DateTimeException(text);
                }
                LocalDate.parse(text);
            } catch (DateTimeException e) {
                fault(Column.DATE, text, "is no date; write year, month, day as 2026-03-14");
            }
        }
        return text;
    }

    private String needed(Column column, int longest) {
        String text = text(column, longest);
        if (text.isEmpty() && headings.places().containsKey(column)) {
            fault(column, "", "nothing stands there; every finding has a number and words");
        }
        return text;
    }

    private String text(Column column, int longest) {
        String text = text(column);
        if (text.codePointCount(0, text.length()) > longest) {
            fault(column, text, "has " + text.codePointCount(0, text.length()) + " characters; " + longest + " are the most");
        }
        return text;
    }

    /** The cell, blanks and line ends in it as single blanks. */
    private String text(Column column) {
        OptionalInt index = index(column);
        return index.isPresent() && index.getAsInt() < record.size()
            ? record.get(index.getAsInt()).replace('\u00a0', ' ').strip().replaceAll("[ \\t\\r\\n]+", " ") : "";
    }

    private OptionalInt index(Column column) {
        Integer index = headings.places().get(column);
        return index == null ? OptionalInt.empty() : OptionalInt.of(index);
    }

    /** The first of some columns in which something stands, or of those that the file has. */
    private WrittenFinding.Told told(Column... columns) {
        Column shown = columns[0];
        boolean there = false;
        for (Column column : columns) {
            if (!text(column).isEmpty()) {
                return new WrittenFinding.Told(row, index(column).orElseThrow() + 1, column.heading(), text(column));
            }
            if (!there && index(column).isPresent()) {
                shown = column;
                there = true;
            }
        }
        return new WrittenFinding.Told(row, there ? index(shown).orElseThrow() + 1 : 0, shown.heading(), "");
    }

    private void fault(Column column, String text, String reason) {
        OptionalInt index = index(column);
        faults.add(new FindingsFault(file, row, index.orElse(-1) + 1,
            column.heading() + ": " + (text.isEmpty() ? "" : Quoted.of(text) + " ") + reason));
    }
}
