package org.garboard.tablefile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.Station;
import org.garboard.tablefile.TakeOffColumns.Column;
import org.garboard.takeoff.Datum;
import org.garboard.takeoff.FloatMark;
import org.garboard.takeoff.Levelling;
import org.garboard.takeoff.Mark;
import org.garboard.takeoff.Side;
import org.garboard.takeoff.TakeOff;
import org.garboard.takeoff.TakeOffFault;
import org.garboard.takeoff.TakenPoint;
import org.garboard.takeoff.TrimFrom;

/** Reads a take-off: heading rows, then a list with a row for each point. */
final class TakeOffReader {
    private static final Pattern PORT = words("p|port");
    private static final Pattern STARBOARD = words("s|stbd|starboard");
    private static final Pattern CENTRE = words("c|cl|cent(re|er)( ?line)?");
    private static final Pattern EDGE = words("edge.*");
    private static final Pattern RABBET = words("rabbet( ?line)?");
    private static final Pattern FLOAT = words("float( ?marks?)?.*");
    /** Farther than this no boat that is loftable reaches [m]; a lost decimal mark. Our choice, as for tables. */
    private static final double FARTHEST = 100;
    private static final double WIDEST = 10;
    private static final double HIGHEST = 20;

    private final Problems problems;
    private final TakeOffHeadings headings;
    private final TakeOffColumns columns;
    private final List<GridRow> list;
    private final Lengths lengths;
    private final int aftward;
    private final int upward;
    private final List<Read> points = new ArrayList<>();
    private final List<FloatMark> floatMarks = new ArrayList<>();
    /** By name: x, in the order of the file. */
    private final Map<String, Double> stations = new LinkedHashMap<>();
    private final Map<String, Cell> placedBy = new LinkedHashMap<>();
    /** Stations of whose distance something has been said. */
    private final Set<String> unplaced = new HashSet<>();
    private final Map<LineKind, Mark> lines = new LinkedHashMap<>();
    private final Map<String, Mark> marks = new LinkedHashMap<>();
    private String station = "";

    /** A row that could be read. */
    private record Read(GridRow row, String station, Side side, double y, double z, Mark mark) {
    }

    private TakeOffReader(List<GridRow> rows, int first, Problems problems) {
        this.problems = problems;
        this.headings = new TakeOffHeadings(problems);
        rows.subList(0, first).forEach(headings::read);
        headings.requireAll();
        this.columns = new TakeOffColumns(rows.get(first), problems);
        this.list = rows.subList(first + 1, rows.size());
        this.lengths = new Lengths(headings.unit().orElse(TableUnit.METRE), problems);
        this.aftward = headings.aftward();
        this.upward = headings.upward();
    }

    private static Pattern words(String regex) {
        return Pattern.compile(regex, Pattern.CASE_INSENSITIVE);
    }

    /** Whether the rows are those of a take-off: by its heading, or by its columns. */
    static boolean isTakeOff(List<GridRow> rows) {
        return rows.stream().anyMatch(row -> TakeOffHeadings.isTitle(row) || TakeOffColumns.isFirstRow(row));
    }

    /** The boat in her own frame; where there are problems, nothing. */
    static Optional<TableReading> read(List<GridRow> rows, Problems problems) {
        int first = IntStream.range(0, rows.size()).filter(i -> Labels.isStation(rows.get(i).first().text())).findFirst().orElse(-1);
        if (first < 0) {
            problems.inFile("no row begins with \"Station\"; write the list of points under a row Station, Distance, Side, Mark, Out, Height");
            return Optional.empty();
        }
        if (!TakeOffColumns.namesAny(rows.get(first))) {
            // a text that speaks of take-offs: its other lines are no rows, and nothing is gained by telling each
            problems.inRow(rows.get(first).number(), "", "this is no take-off: the first line that begins with \"Station\" heads none of the columns"
                + " Distance, Side, Mark, Out, Height; write the list of points under a row with these");
            return Optional.empty();
        }
        TakeOffReader reader = new TakeOffReader(rows, first, problems);
        return problems.isEmpty() || reader.headings.unit().isPresent() ? reader.levelled() : Optional.empty();
    }

    private Optional<TableReading> levelled() {
        list.forEach(this::point);
        lengths.compareMarks();
        Optional<TakeOff> takeOff = takeOff();
        if (takeOff.isEmpty() || !problems.isEmpty()) {
            return Optional.empty();
        }
        Levelling levelling = Levelling.of(takeOff.get());
        if (levelling instanceof Levelling.Levelled levelled) {
            return Optional.of(new TableReading.TakenOff(levelled.offsets(), headings.notes()));
        }
        ((Levelling.Refused) levelling).faults().forEach(this::report);
        return Optional.empty();
    }

    private void report(TakeOffFault fault) {
        if (fault.row().isPresent() && fault.seen().isPresent()) {
            Column column = Column.valueOf(fault.seen().get().name());
            GridRow row = list.stream().filter(each -> each.number() == fault.row().getAsInt()).findFirst().orElseThrow();
            Cell cell = columns.cell(row, column);
            problems.inCell(cell, "", column.word().toLowerCase(Locale.ROOT), "does not serve: " + fault.reason());
        } else if (fault.row().isPresent()) {
            problems.inRow(fault.row().getAsInt(), "", fault.reason());
        } else {
            problems.inFile(fault.reason());
        }
    }

    private void point(GridRow row) {
        columns.beyond(row).ifPresent(cell -> problems.inCell(cell, "", "", "stands in no column of the list"));
        Cell mark = columns.cell(row, Column.MARK);
        boolean isFloat = FLOAT.matcher(mark.text()).matches() || FLOAT.matcher(columns.cell(row, Column.STATION).text()).matches();
        String place = isFloat ? "float mark" : place(row);
        Optional<Double> distance = distance(row, place, isFloat);
        Optional<Double> height = offset(columns.cell(row, Column.HEIGHT), place, "height", HIGHEST);
        Optional<Double> out = offset(columns.cell(row, Column.OUT), place, "distance out", WIDEST);
        Cell sideCell = columns.cell(row, Column.SIDE);
        Optional<Side> side = side(sideCell, place, out);
        if (height.isEmpty() || out.isEmpty() || side.isEmpty()) {
            return;
        }
        double y = side.get() == Side.PORT ? -out.get() : out.get();
        if (isFloat) {
            distance.ifPresent(x -> floatMarks.add(new FloatMark(row.number(), x, y, upward * height.get())));
        } else if (stations.containsKey(station)) {
            Mark named = mark(mark);
            boolean keel = named.line().isPresent() && named.line().get() == LineKind.KEEL;
            boolean bottom = named.line().isPresent() && named.line().get() == LineKind.KEEL_BOTTOM;
            if (!keel && !bottom && side.get() == Side.CENTRE) {
                problems.inCell(sideCell, place, "side", "is told of the keel and of the middle of its bottom alone; write port or starboard");
            }
            points.add(new Read(row, station, keel ? Side.CENTRE : side.get(), y, upward * height.get(), named));
        }
    }

    /** The row's station; where it is blank, that of the row above. */
    private String place(GridRow row) {
        Cell cell = columns.cell(row, Column.STATION);
        if (!cell.isBlank()) {
            station = cell.text().replaceFirst("^" + Labels.STATION + " +", "");
        }
        return "station " + station;
    }

    /** A station's distance stands in its first row, and may stand in the others. */
    private Optional<Double> distance(GridRow row, String place, boolean isFloat) {
        Cell cell = columns.cell(row, Column.DISTANCE);
        if (cell.isBlank()) {
            if (isFloat || !stations.containsKey(station) && unplaced.add(station)) {
                problems.inCell(cell, place, "distance", isFloat ? "is blank; a float mark is measured along the boat too"
                    : "is blank; write it in the station's first row");
            }
            return Optional.empty();
        }
        Optional<Double> x = lengths.place(cell, place, "distance").map(told -> aftward * told);
        if (x.isEmpty() && !isFloat) {
            unplaced.add(station);
        }
        if (x.isPresent() && Math.abs(x.get()) > FARTHEST) {
            unplaced.add(station);
            problems.inCell(cell, place, "distance", "is more than " + (int) FARTHEST + " m; see whether the unit is right");
            return Optional.empty();
        }
        if (x.isPresent() && !isFloat) {
            Double before = stations.putIfAbsent(station, x.get());
            Cell first = placedBy.putIfAbsent(station, cell);
            if (before != null && Math.abs(before - x.get()) > 1e-9) {
                problems.inCell(cell, place, "distance", "is another than " + first.quoted() + " in line " + first.row()
                    + "; all points of a station stand in one plumb plane");
            }
        }
        return x;
    }

    private Optional<Double> offset(Cell cell, String place, String meaning, double most) {
        if (cell.isBlank()) {
            problems.inCell(cell, place, meaning, "is blank; write what was read, 0 if it was that");
            return Optional.empty();
        }
        Optional<Double> metres = lengths.offset(cell, place, meaning);
        if (metres.isPresent() && Math.abs(metres.get()) > most) {
            problems.inCell(cell, place, meaning, "is more than " + (int) most + " m; see whether its unit and its decimal mark are right");
            return Optional.empty();
        }
        return metres;
    }

    private Optional<Side> side(Cell cell, String place, Optional<Double> out) {
        if (PORT.matcher(cell.text()).matches()) {
            return Optional.of(Side.PORT);
        }
        if (STARBOARD.matcher(cell.text()).matches()) {
            return Optional.of(Side.STARBOARD);
        }
        if (!CENTRE.matcher(cell.text()).matches()) {
            problems.inCell(cell, place, "side", "is none; write port, starboard, or centre for a keel that stands over the line");
            return Optional.empty();
        }
        if (out.isPresent() && out.get() != 0) {
            problems.inCell(cell, place, "side", "does not say to which side of the stretched line the distance out was measured; write port or starboard");
        }
        return Optional.of(Side.CENTRE);
    }

    /** One mark for each spelling, and for each line that a boat has once. */
    private Mark mark(Cell cell) {
        if (cell.isBlank()) {
            return Mark.NONE;
        }
        Optional<LineKind> kind = EDGE.matcher(cell.text()).matches() ? Optional.of(LineKind.EDGE)
            : RABBET.matcher(cell.text()).matches() ? Optional.of(LineKind.RABBET)
            : Labels.line(cell.text()).map(Labels.Line::kind).filter(line -> line != LineKind.WATERLINE && line != LineKind.BUTTOCK);
        boolean several = kind.isPresent()
            && (kind.get() == LineKind.CHINE || kind.get() == LineKind.STRAKE_INNER || kind.get() == LineKind.STRAKE_OUTER);
        if (kind.isPresent() && !several) {
            return lines.computeIfAbsent(kind.get(), line -> new Mark(kind, cell.text()));
        }
        return marks.computeIfAbsent(Labels.key(cell.text()), key -> new Mark(kind, cell.text()));
    }

    private Optional<TakeOff> takeOff() {
        List<Station> ordered = stations.entrySet().stream().map(each -> new Station(each.getKey(), each.getValue()))
            .sorted(Comparator.comparingDouble(Station::x)).toList();
        if (ordered.size() > Layout.MOST_STATIONS) {
            problems.inFile("the take-off has " + ordered.size() + " stations; " + Layout.MOST_STATIONS + " are the most");
        }
        List<String> names = ordered.stream().map(Station::name).toList();
        List<TakenPoint> taken = points.stream().map(each -> new TakenPoint(each.row().number(), names.indexOf(each.station()),
            each.side(), each.y(), each.z(), each.mark())).toList();
        Optional<Datum> datum = headings.datum(lengths, upward);
        Optional<TrimFrom> trim = trim(names);
        double symmetric = headings.symmetricWithin(lengths);
        if (datum.isEmpty() || trim.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new TakeOff(headings.title(), taken.isEmpty() ? 0 : lengths.leastCount(), datum.get(), ordered, taken, floatMarks,
            trim.get(), symmetric, headings.openEnds()));
    }

    private Optional<TrimFrom> trim(List<String> names) {
        Optional<GridRow> marksRow = headings.floatMarks();
        Optional<GridRow> keel = headings.straightKeel();
        if (marksRow.isPresent()) {
            GridRow row = marksRow.get();
            if (row.at(2).isBlank()) {
                problems.inCell(row.at(2), "", "", "does not name the waterline of the float marks; write its name, as load waterline");
                return Optional.empty();
            }
            OptionalDouble height = row.at(3).isBlank() ? OptionalDouble.empty()
                : lengths.place(row.at(3), "", "height of the waterline").map(OptionalDouble::of).orElse(OptionalDouble.empty());
            return Optional.of(new TrimFrom.FloatMarks(row.at(2).text(), height));
        }
        return keel.flatMap(row -> {
            int from = station(row.at(2), names);
            int to = station(row.at(3), names);
            return from < 0 || to < 0 ? Optional.empty()
                : Optional.of(new TrimFrom.StraightKeel(Math.min(from, to), Math.max(from, to)));
        });
    }

    private int station(Cell cell, List<String> names) {
        int index = names.indexOf(cell.text().replaceFirst("^" + Labels.STATION + " +", ""));
        if (index < 0 && !unplaced.contains(cell.text().replaceFirst("^" + Labels.STATION + " +", ""))) {
            problems.inCell(cell, "", "", "is no station of this take-off; they are " + String.join(", ", names)
                + "; write the first and the last between which the keel is straight");
        }
        return index;
    }
}
