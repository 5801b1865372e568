package org.garboard.mount;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * What every check of a job is held to: the program's own limits, and those that the job has instead.
 *
 * @param asked instead of the program's own [metres, radians, decibels, beams or knots]
 */
public record Limits(Map<LimitName, Double> asked) {
    public static final Limits OWN = new Limits(Map.of());

    public Limits {
        Map<LimitName, Double> kept = new EnumMap<>(LimitName.class);
        kept.putAll(asked);
        kept.forEach((name, value) -> {
            if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("the limit " + name.word() + " is " + value + "; it must be more than 0");
            }
        });
        asked = Collections.unmodifiableMap(kept);
    }

    public Limit of(LimitName name) {
        Double value = asked.get(name);
        return value == null ? name.own() : name.own().with(value);
    }

    /** The walls are to hold the bedding over a quarter of the body's height [m]. */
    static Limit wallHeight(double bodyHeight) {
        return Limit.ofMetres(bodyHeight / 4,
            "our choice, because bedding that grips less than a quarter of the body does not hold it sideways");
    }
}
