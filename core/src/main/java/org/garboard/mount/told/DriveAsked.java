package org.garboard.mount.told;

import java.util.List;
import org.garboard.craft.Drive;
import org.garboard.finding.NotKnown;
import org.garboard.finding.Ruling;
import org.garboard.mount.Check;
import org.garboard.mount.Demand;
import org.garboard.mount.Installation;
import org.garboard.mount.LimitName;
import org.garboard.mount.Surroundings;

/** What a transom mount asks of what drives the boat: clear of the propeller, on the side where its blades go down. */
public final class DriveAsked {
    private static final String WATER = "water at the transom";
    private static final String CLEAR = "clear of the propeller";
    private static final String PRACTICE = "common practice, no source: abaft of propellers, or in a jet, the water is full of air";

    private DriveAsked() {
    }

    /**
     * Distance from each propeller's axis, and of the nearest on the side where its blades move down: there they throw least air
     * towards it.
     */
    public static List<Demand> fromPropeller(Installation installation, Surroundings around) {
        if (!around.drive().map(drive -> drive.kind().hangsBehind()).orElse(false)) {
            return List.of();
        }
        Drive drive = around.drive().get();
        double[] axes = drive.axes().stream().mapToDouble(Double::doubleValue).toArray();
        int[] down = drive.axes().stream().mapToInt(drive::downwardSide).toArray();
        double inner = installation.transducer().width() / 2;
        String why = axes.length == 0 ? "How far apart the " + drive.number() + " engines stand is not told: keep 380 mm from the axis of each."
            : drive.hand().isEmpty() ? "Which way the propeller turns is not told: the side where its blades go down is the better one." : "";
        return List.of(Demand.atLeast(CLEAR, installation.limits().of(LimitName.FROM_PROPELLER),
            bed -> axes.length == 0 ? Double.NaN : room(axes, down, bed.y()) - inner,
            "It hangs far enough from the propeller's axis, and not on the side where the blades come up.",
            "It hangs too near the propeller's axis, or on the side where the blades come up.").leavingOut(bed -> why).ofPlaceAlone());
    }

    /** From the nearest axis; below 0 on the side where its blades come up. */
    private static double room(double[] axes, int[] down, double y) {
        int nearest = 0;
        for (int i = 1; i < axes.length; i++) {
            nearest = Math.abs(y - axes[i]) < Math.abs(y - axes[nearest]) ? i : nearest;
        }
        double off = y - axes[nearest];
        return down[nearest] == 0 ? Math.abs(off) : down[nearest] * off;
    }

    /** Whether side by side is not alike: propellers that turn one way. */
    public static boolean hasSide(Surroundings around) {
        return around.drive().filter(drive -> drive.kind().hangsBehind() && drive.hand().filter(hand -> hand != Drive.Hand.COUNTER_ROTATING).isPresent()).isPresent();
    }

    /** The same along the whole transom. */
    public static List<Check> settled(Surroundings around) {
        if (around.drive().isEmpty()) {
            return List.of(Check.of(new NotKnown(WATER, PRACTICE, "What drives her is not told: look whether propellers or a jet stir the water ahead of"
                + " the transom, and keep 380 mm from an outboard's propeller.")));
        }
        Drive drive = around.drive().get();
        return List.of(Check.of(drive.kind().hangsBehind()
            ? Ruling.allowed(WATER, PRACTICE, "The propeller turns abaft of the transom.")
            : Ruling.refused(WATER, PRACTICE, "With a " + drive.kind().words() + " drive the water at the transom is stirred and full of air.")));
    }
}
