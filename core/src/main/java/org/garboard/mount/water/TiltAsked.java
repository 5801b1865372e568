package org.garboard.mount.water;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.garboard.acoustics.beam.EchoLoss;
import org.garboard.acoustics.beam.Element;
import org.garboard.craft.SoundBeam;
import org.garboard.flow.water.Water;
import org.garboard.mount.Bed;
import org.garboard.mount.Demand;
import org.garboard.mount.Installation;
import org.garboard.mount.LimitName;
import org.garboard.units.FixedDecimal;

/** Where the beam looks at the running trim. */
final class TiltAsked {

    private TiltAsked() {
    }

    /** For each beam in turn, in the water of the boat: the same at every speed. */
    static List<EchoLoss> losses(Installation installation, Water water) {
        return installation.details().beams().stream().map(beam -> EchoLoss.of(Element.of(beam, water.soundSpeed()))).toList();
    }

    /** @param losses of each beam in this water */
    static List<Demand> demands(Installation installation, List<EchoLoss> losses, WaterAtSpeed water, ToDoubleFunction<Bed> lean) {
        List<Demand> demands = new ArrayList<>();
        for (int i = 0; i < losses.size(); i++) {
            demands.add(demand(installation, water, installation.details().beams().get(i), losses.get(i), lean));
        }
        return demands;
    }

    private static Demand demand(Installation installation, WaterAtSpeed water, SoundBeam beam, EchoLoss loss, ToDoubleFunction<Bed> lean) {
        double inclination = installation.transducer().elementInclination().radians();
        double[] cos = new double[water.ends()];
        double[] sin = new double[water.ends()];
        for (int i = 0; i < water.ends(); i++) {
            cos[i] = Math.cos(water.end(i).trim());
            sin[i] = Math.sin(water.end(i).trim());
        }
        WaterAtSpeed.Reading reading = (end, bed) -> {
            double along = Math.tan(bed.slope());
            double athwart = Math.tan(lean.applyAsDouble(bed) - inclination);
            // a bow that is up turns what looks down ahead
            return loss.at(along * cos[end] - sin[end], athwart, -cos[end] - along * sin[end]);
        };
        return Demand.atMost("echo lost by tilt at " + water.words() + ", " + kilohertz(beam), installation.limits().of(LimitName.ECHO_LOSS),
            bed -> water.most(reading, bed), "At the running trim straight below the beam is nearly as strong as where it looks.",
            "At the running trim the beam looks so far ahead or astern that too little comes back from straight below.")
            .leavingOut(bed -> water.left(reading, bed))
            .telling(bed -> {
                EndOfBand end = water.governing(reading, bed, water.most(reading, bed));
                return "She trims " + FixedDecimal.format(Math.toDegrees(end.trim()), 1) + " deg, " + end.name() + ".";
            }).at(water.knots());
    }

    private static String kilohertz(SoundBeam beam) {
        return FixedDecimal.format(beam.frequency() / 1000, 0) + " kHz";
    }
}
