package org.garboard.flow.attitude;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.garboard.units.Angle;

/** How a load floats at trims that are asked for, each worked out once: it is the same at every speed at which she lies as she floats. */
final class LoadAtTrims {
    private final Flotation flotation;
    private final Load load;
    private final Flotation.Afloat atRest;
    private final Map<Double, Flotation.Answer> known = new ConcurrentHashMap<>();

    LoadAtTrims(Flotation flotation, Load load, Flotation.Afloat atRest) {
        this.flotation = flotation;
        this.load = load;
        this.atRest = atRest;
    }

    Flotation.Answer at(Angle trim) {
        return known.computeIfAbsent(trim.radians(), none -> flotation.at(load, trim, atRest));
    }
}
