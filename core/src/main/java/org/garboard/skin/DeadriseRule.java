package org.garboard.skin;

import java.util.Optional;
import org.garboard.finding.Bound;
import org.garboard.finding.Figure;
import org.garboard.finding.Finding;
import org.garboard.finding.NotKnown;
import org.garboard.units.Angle;
import org.garboard.units.FixedDecimal;

/** Deadrise as measured on the boat against the table of offsets. */
public final class DeadriseRule {
    private static final String NAME = "measured deadrise";

    /** How far it may differ. */
    public static final Bound DIFFERENCE = new Bound(1, "deg",
        "our choice, because a boat that differs more from her table is not the boat of the table");

    private DeadriseRule() {
    }

    /**
     * Both sides, each against the table. A difference does not refuse the place: it makes it not known.
     *
     * @param table deadrise there by the table, the same on both sides
     */
    public static Finding at(HullSkin skin, double x, double y, Angle table) {
        Optional<MeasuredDeadrise> near = skin.deadrises().stream()
            .filter(each -> each.from(x, y) <= HullSkin.NEAR.value() / 1000 + 1e-9)
            .min((a, b) -> Double.compare(a.from(x, y), b.from(x, y)));
        if (near.isEmpty()) {
            return new NotKnown(NAME, DIFFERENCE.source(), "No deadrise was measured within 300 mm: measure it on both sides"
                + (y == 0 ? " beside the keel, and compare with each side's deadrise there by the table."
                    : ", and compare with " + degrees(table.degrees()) + "."));
        }
        if (near.get().starboard().isEmpty() || near.get().port().isEmpty()) {
            return new NotKnown(NAME, DIFFERENCE.source(), "Deadrise was measured on one side only: without the other a list of the boat cannot be told.");
        }
        double starboard = near.get().starboard().get().degrees() - table.degrees();
        double port = near.get().port().get().degrees() - table.degrees();
        double worst = Math.max(Math.abs(starboard), Math.abs(port));
        String words = "Measured " + degrees(near.get().starboard().get().degrees()) + " to starboard and "
            + degrees(near.get().port().get().degrees()) + " to port, by the table " + degrees(table.degrees()) + ".";
        if (worst <= DIFFERENCE.value()) {
            return Figure.atMost(NAME, worst, DIFFERENCE, words, words);
        }
        boolean listing = Math.abs(starboard + port) / 2 <= DIFFERENCE.value() && starboard * port < 0;
        return new NotKnown(NAME, DIFFERENCE.source(), words + (listing
            ? " The mean of both agrees: she may be lying over. Level her and measure again."
            : " Boat and table differ by more than 1 deg: stop, and find out which is right."));
    }

    /** The worse of both sides' differences there [rad]; NaN where it is not known, or is too large to be the same boat. */
    public static double difference(HullSkin skin, double x, double y, double tableRadians, double mostRadians) {
        MeasuredDeadrise near = null;
        for (int i = 0; i < skin.deadrises().size(); i++) {
            MeasuredDeadrise each = skin.deadrises().get(i);
            if (each.from(x, y) <= HullSkin.NEAR.value() / 1000 + 1e-9 && (near == null || each.from(x, y) < near.from(x, y))) {
                near = each;
            }
        }
        if (near == null || near.starboard().isEmpty() || near.port().isEmpty()) {
            return Double.NaN;
        }
        double worst = Math.max(Math.abs(near.starboard().get().radians() - tableRadians), Math.abs(near.port().get().radians() - tableRadians));
        return worst > mostRadians ? Double.NaN : worst;
    }

    private static String degrees(double value) {
        return FixedDecimal.format(value, 1) + " deg";
    }
}
