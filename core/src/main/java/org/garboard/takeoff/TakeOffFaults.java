package org.garboard.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.garboard.offsets.LengthWords;
import org.garboard.offsets.LineKind;

/** What is missing in a take-off or stands twice, before anything is reckoned from it. */
final class TakeOffFaults {
    private static final int FEWEST_STATIONS = 3;
    /**
     * Readings tell heel and trim over a breadth or length of so many least counts: to a third of a degree at the
     * worst. Our choice.
     */
    private static final double LEAST_ARM = 200;

    private final TakeOff takeOff;
    private final List<MarkedLine> lines;
    private final LengthWords words;
    private final List<TakeOffFault> faults = new ArrayList<>();

    private TakeOffFaults(TakeOff takeOff) {
        this.takeOff = takeOff;
        this.lines = MarkedLine.of(takeOff);
        this.words = new LengthWords(takeOff.leastCount());
    }

    static List<TakeOffFault> of(TakeOff takeOff) {
        TakeOffFaults check = new TakeOffFaults(takeOff);
        check.stations();
        check.twice();
        check.keel();
        check.knuckles();
        check.faults.addAll(BesideFaults.of(takeOff, check.lines));
        check.outer();
        check.heel();
        check.trim();
        return List.copyOf(check.faults);
    }

    private void stations() {
        int count = takeOff.stations().size();
        if (count < FEWEST_STATIONS) {
            whole("the take-off has " + count + " station(s); three are the least, for between two nothing tells how the"
                + " skin curves along the boat");
        }
        for (int j = 1; j < count; j++) {
            if (!(takeOff.stations().get(j).x() > takeOff.stations().get(j - 1).x())) {
                faults.add(TakeOffFault.at(firstRow(j), Seen.DISTANCE, station(j) + " stands where " + station(j - 1)
                    + " stands; give each station a distance of its own. A step across the bottom is not read from a take-off:"
                    + " measure the bottom ahead of the first step, where the transducer goes, and end there"));
            }
        }
    }

    private void twice() {
        for (int i = 0; i < takeOff.points().size(); i++) {
            TakenPoint point = takeOff.points().get(i);
            boolean repeated = !point.mark().equals(Mark.NONE) && takeOff.points().subList(0, i).stream().anyMatch(other ->
                other.station() == point.station() && other.mark().equals(point.mark())
                    && (other.side() == point.side() || point.side() == Side.CENTRE || other.side() == Side.CENTRE));
            if (repeated) {
                faults.add(TakeOffFault.at(point.row(), Seen.MARK, point.mark().name() + " is given twice at " + station(point.station())
                    + " on one side; leave one out, or give the two marks of their own"));
            }
        }
    }

    private void keel() {
        List<List<Integer>> keel = MarkedLine.first(lines, LineKind.KEEL).map(MarkedLine::stations).orElse(List.of());
        if (MarkedLine.first(lines, LineKind.RABBET).isPresent()) {
            return;
        }
        if (keel.isEmpty()) {
            whole("no point is marked keel; measure at every station where the bottom skin meets the centreline, and mark"
                + " it keel; where a keel hangs below the skin, measure where the skin meets its two sides, and mark that rabbet");
        }
        for (int j = 0; j < keel.size(); j++) {
            if (keel.get(j).isEmpty()) {
                at(firstRow(j), station(j) + " has no point marked keel; measure there where the bottom skin meets the"
                    + " centreline");
            } else if (keel.get(j).size() > 1) {
                at(takeOff.points().get(keel.get(j).get(1)).row(), "the keel is given on both sides at " + station(j)
                    + "; it is one point, on the centreline");
            }
        }
    }

    /** A knuckle that is marked somewhere divides the skin everywhere. */
    private void knuckles() {
        for (MarkedLine line : lines) {
            if (line.kind() == LineKind.RABBET || line.kind() == LineKind.CHINE || line.kind() == LineKind.HALF_SIDING || line.kind() == LineKind.KEEL_TOP) {
                missing(line, line.kind() == LineKind.RABBET
                    ? "measure there where the skin meets keel, stem or sternpost, to port and to starboard"
                    : "measure it there too, or take the mark off the others");
            }
        }
    }

    private void outer() {
        boolean chines = lines.stream().anyMatch(line -> line.kind() == LineKind.CHINE);
        List<MarkedLine> begun = lines.stream()
            .filter(line -> line.kind() == LineKind.SHEER || line.kind() == LineKind.EDGE).toList();
        if (MarkedLine.outer(lines).isPresent() || begun.isEmpty() && chines) {
            return;
        }
        if (begun.isEmpty()) {
            whole("nothing tells how far out the skin was measured; mark the outermost point of every station edge, or"
                + " sheer if it is that, or measure the chine at every station");
        }
        begun.forEach(line -> missing(line, "measure the outermost point of every station and mark it so"));
    }

    private void missing(MarkedLine line, String remedy) {
        for (int j = 0; j < line.stations().size(); j++) {
            if (line.stations().get(j).isEmpty()) {
                at(firstRow(j), station(j) + " has no point marked " + line.name() + "; " + remedy);
            }
        }
    }

    private void heel() {
        List<Pair> pairs = Pair.of(takeOff);
        double arm = Math.sqrt(pairs.stream().mapToDouble(pair -> Math.pow(takeOff.points().get(pair.starboard()).y()
            - takeOff.points().get(pair.port()).y(), 2)).sum());
        if (pairs.isEmpty()) {
            whole("no mark is measured on both sides of one station, so nothing tells the heel; measure the chine, the"
                + " sheer, or a chalk mark at one girth from the keel to port and to starboard, at two stations or more");
        } else if (arm < LEAST_ARM * takeOff.leastCount()) {
            at(takeOff.points().get(pairs.get(0).starboard()).row(), "the marks that are measured on both sides stand only "
                + words.say(arm) + " apart in all, too little to tell the heel by; measure farther out, "
                + words.say(LEAST_ARM * takeOff.leastCount()) + " from side to side at least");
        }
    }

    private void trim() {
        boolean byMarks = takeOff.trimFrom() instanceof TrimFrom.FloatMarks;
        double from = byMarks ? takeOff.floatMarks().stream().mapToDouble(FloatMark::x).min().orElse(0) : keelX(0);
        double to = byMarks ? takeOff.floatMarks().stream().mapToDouble(FloatMark::x).max().orElse(0) : keelX(1);
        if (byMarks && takeOff.floatMarks().size() < 2) {
            whole("the trim is to come from float marks, and " + takeOff.floatMarks().size() + " is measured; measure one"
                + " forward and one aft at least, on one waterline");
        } else if (!byMarks && MarkedLine.first(lines, LineKind.KEEL_BOTTOM).isPresent() && !isLowMeasured()) {
            whole("the trim is to come from the straight run of the keel, and " + MarkedLine.lowest(lines).map(MarkedLine::name).orElse("the keel")
                + " is not measured at every station of that run; measure it there, or name the stations where it is");
        } else if (to - from < LEAST_ARM * takeOff.leastCount()) {
            whole((byMarks ? "the float marks stand only " : "the straight run of the keel is only ") + words.say(Math.max(0, to - from))
                + (byMarks ? " apart" : " long") + " fore and aft, too little to tell the trim by; "
                + words.say(LEAST_ARM * takeOff.leastCount()) + " are the least");
        }
        if (!byMarks) {
            takeOff.floatMarks().forEach(mark -> at(mark.row(), "a float mark stands here, and the trim is to come from the"
                + " straight run of the keel; give one or the other"));
        }
    }

    private boolean isLowMeasured() {
        TrimFrom.StraightKeel run = (TrimFrom.StraightKeel) takeOff.trimFrom();
        return MarkedLine.lowest(lines).stream()
            .noneMatch(low -> low.stations().subList(run.from(), run.to() + 1).stream().anyMatch(List::isEmpty));
    }

    private double keelX(int end) {
        TrimFrom.StraightKeel keel = (TrimFrom.StraightKeel) takeOff.trimFrom();
        return takeOff.stations().get(end == 0 ? keel.from() : keel.to()).x();
    }

    private String station(int station) {
        return "station " + takeOff.stations().get(station).name();
    }

    private int firstRow(int station) {
        return IntStream.range(0, takeOff.points().size()).filter(i -> takeOff.points().get(i).station() == station)
            .map(i -> takeOff.points().get(i).row()).min().orElse(0);
    }

    private void whole(String reason) {
        faults.add(TakeOffFault.inWhole(reason));
    }

    private void at(int row, String reason) {
        faults.add(TakeOffFault.at(row, reason));
    }
}
