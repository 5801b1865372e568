package org.garboard.takeoff;

import java.util.ArrayList;
import java.util.List;
import org.garboard.offsets.LengthWords;
import org.garboard.offsets.LineKind;

/** Whether the two sides are alike once the heel is out, and the keel lies on the centreline. */
final class Symmetry {
    /**
     * Least counts that rounding alone may part two sides by: half a count of each of the two readings, up and out,
     * through a heel, and what it leaves open of heel and centreline. Our choice.
     */
    private static final double ROUNDING = 2;

    private final TakeOff takeOff;
    private final PlacedPoints placed;
    private final double allowed;
    private final LengthWords words;

    Symmetry(TakeOff takeOff, PlacedPoints placed) {
        this.takeOff = takeOff;
        this.placed = placed;
        this.allowed = Math.max(takeOff.symmetricWithin(), ROUNDING * takeOff.leastCount());
        this.words = new LengthWords(takeOff.leastCount());
    }

    /** By how much a pair differs most [m]. */
    double most() {
        return Pair.of(takeOff).stream().mapToDouble(pair -> Math.max(Math.abs(out(pair)), Math.abs(up(pair)))).max().orElse(0);
    }

    List<TakeOffFault> faults() {
        List<TakeOffFault> faults = new ArrayList<>();
        for (Pair pair : Pair.of(takeOff)) {
            if (Math.max(Math.abs(out(pair)), Math.abs(up(pair))) > allowed) {
                TakenPoint starboard = takeOff.points().get(pair.starboard());
                faults.add(TakeOffFault.at(starboard.row(), Math.abs(up(pair)) >= Math.abs(out(pair)) ? Seen.HEIGHT : Seen.OUT, starboard.mark().name() + " at station "
                    + takeOff.stations().get(starboard.station()).name() + ": with the heel taken out, starboard lies "
                    + words.say(Math.abs(up(pair))) + (up(pair) < 0 ? " lower and " : " higher and ")
                    + words.say(Math.abs(out(pair))) + (out(pair) < 0 ? " farther in" : " farther out") + " than port (line "
                    + takeOff.points().get(pair.port()).row() + "), more than the rounding explains; measure both again, or, if"
                    + " the boat is so, allow it by a row Symmetric within, and the mean of both sides is drawn"));
            }
        }
        for (int i = 0; i < takeOff.points().size(); i++) {
            TakenPoint point = takeOff.points().get(i);
            if ((point.mark().is(LineKind.KEEL) || isMiddleOfBottom(i)) && Math.abs(placed.y(i)) > allowed) {
                faults.add(TakeOffFault.at(point.row(), Seen.OUT, (point.mark().is(LineKind.KEEL) ? "the keel" : point.mark().name()) + " at station " + takeOff.stations().get(point.station()).name()
                    + " lies " + words.say(Math.abs(placed.y(i))) + (placed.y(i) * (point.side() == Side.PORT ? -1 : 1) < 0 ? " to port" : " to starboard")
                    + " of the straight line through " + (point.mark().is(LineKind.KEEL) ? "the keel of all stations" : "the middle of the rabbet, and"
                    + " where only one point of it is measured it is the middle") + ", more than the rounding explains; measure it"
                    + " again, or, if the boat is so, allow it by a row Symmetric within"));
            }
        }
        return faults;
    }

    private boolean isMiddleOfBottom(int index) {
        TakenPoint point = takeOff.points().get(index);
        return point.mark().is(LineKind.KEEL_BOTTOM) && takeOff.points().stream()
            .filter(other -> other.station() == point.station() && other.mark().equals(point.mark())).count() == 1;
    }

    private double out(Pair pair) {
        return placed.y(pair.starboard()) - placed.y(pair.port());
    }

    private double up(Pair pair) {
        return placed.z(pair.starboard()) - placed.z(pair.port());
    }
}
