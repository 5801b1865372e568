package org.garboard.takeoff;

import java.util.List;

/** What came of bringing a take-off into the boat's own frame. */
public sealed interface Levelling permits Levelling.Levelled, Levelling.Refused {

    /** It can be drawn. */
    record Levelled(LevelledOffsets offsets) implements Levelling {
    }

    /** It cannot be used. */
    record Refused(List<TakeOffFault> faults) implements Levelling {
        public Refused {
            faults = List.copyOf(faults);
        }
    }

    /** Everything that is wrong with a take-off, or the boat upright and level. */
    static Levelling of(TakeOff takeOff) {
        List<TakeOffFault> faults = TakeOffFaults.of(takeOff);
        return faults.isEmpty() ? new Leveller(takeOff).levelled() : new Refused(faults);
    }
}
