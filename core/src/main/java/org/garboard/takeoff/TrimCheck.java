package org.garboard.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.offsets.LengthWords;
import org.garboard.offsets.LineKind;

/** Whether what the trim was taken from is as level, or as straight, as it should be. */
final class TrimCheck {
    /** Least counts that rounding alone may put a mark off: its own half and what it leaves open of heel. Our choice. */
    private static final double ROUNDING = 2;

    private final TakeOff takeOff;
    private final Pose pose;
    private final LengthWords words;
    private final List<TakeOffFault> faults = new ArrayList<>();

    TrimCheck(TakeOff takeOff, Pose pose) {
        this.takeOff = takeOff;
        this.pose = pose;
        this.words = new LengthWords(takeOff.leastCount());
    }

    List<TakeOffFault> faults() {
        if (takeOff.trimFrom() instanceof TrimFrom.StraightKeel run) {
            straight(run);
        } else {
            level();
        }
        return faults;
    }

    private void straight(TrimFrom.StraightKeel run) {
        List<TakenPoint> keel = takeOff.points().stream().filter(point -> point.mark().line().equals(Optional.of(low()))
            && point.station() >= run.from() && point.station() <= run.to()).toList();
        double mean = keel.stream().mapToDouble(this::height).average().orElseThrow();
        for (TakenPoint point : keel) {
            tell(point.row(), (low() == LineKind.KEEL ? "the keel" : point.mark().name()) + " at station " + takeOff.stations().get(point.station()).name(), height(point) - mean,
                "the straight run of the keel; measure it again, or name stations between which the keel is straight");
        }
    }

    private LineKind low() {
        List<MarkedLine> lines = MarkedLine.of(takeOff);
        return MarkedLine.first(lines, LineKind.KEEL_BOTTOM).or(() -> MarkedLine.first(lines, LineKind.KEEL)).map(MarkedLine::kind)
            .orElse(LineKind.RABBET);
    }

    private void level() {
        double mean = takeOff.floatMarks().stream().mapToDouble(this::height).average().orElseThrow();
        for (FloatMark mark : takeOff.floatMarks()) {
            tell(mark.row(), "this float mark", height(mark) - mean,
                "the waterline through all float marks; measure it again, or leave it out if it belongs to another waterline");
        }
    }

    private void tell(int row, String what, double off, String of) {
        if (Math.abs(off) > ROUNDING * takeOff.leastCount()) {
            faults.add(TakeOffFault.at(row, Seen.HEIGHT, what + " lies " + words.say(Math.abs(off)) + (off < 0 ? " below " : " above ") + of));
        }
    }

    private double height(TakenPoint point) {
        return pose.own(takeOff.stations().get(point.station()).x(), point.y(), point.z())[2];
    }

    private double height(FloatMark mark) {
        return pose.own(mark.x(), mark.y(), mark.z())[2];
    }
}
