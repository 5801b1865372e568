package org.garboard.flow.attitude;

import java.util.Optional;
import org.garboard.craft.SeaTrial;
import org.garboard.units.Angle;

/**
 * What was measured under way, or asked for, and stands against what would be worked out.
 *
 * @param basis which of them
 * @param trim of the base line
 * @param wettedKeel along the keel from its after end [m]
 */
record Measured(Basis basis, Optional<Angle> trim, Optional<Double> wettedKeel) {
    static final Measured NOTHING = new Measured(Basis.WORKED_OUT, Optional.empty(), Optional.empty());

    static Measured of(SeaTrial trial) {
        Basis basis = trial.trim().isEmpty() ? Basis.MEASURED_KEEL
            : trial.wettedKeel().isEmpty() ? Basis.MEASURED_TRIM : Basis.MEASURED_TRIM_AND_KEEL;
        return new Measured(basis, trial.trim(), trial.wettedKeel());
    }

    static Measured asked(Angle trim) {
        return new Measured(Basis.TRIM_ASKED, Optional.of(trim), Optional.empty());
    }

    /** The same, the keel counted from so much farther forward [m]. */
    Measured fartherForward(double by) {
        return new Measured(basis, trim, wettedKeel.map(keel -> keel - by));
    }
}
