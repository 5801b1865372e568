package org.garboard.mount;

import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * One thing that a mount demands of its place and that can be measured: the reading of a {@link Bed},
 * held to a limit.
 *
 * @param name of the check
 * @param sense a maximum (the reading counts by its size) or a minimum (it counts with its sign)
 * @param limit what it is held to
 * @param reading taken from the bed, in metres or radians; infinite where there is nothing to keep
 *     clear of, NaN where it cannot be taken
 * @param met what it means that the check is met, a sentence
 * @param notMet what it means that it is not
 * @param unread what it means for a place that the reading cannot be taken there
 * @param detail of the place last measured, a sentence that is put after the other two; why it is not known where the
 *     reading cannot be taken; may be empty
 * @param missing what the reading leaves out at a place, a sentence; empty where it is the whole answer. A limit that the part
 *     which is known does not keep is not kept; one that it keeps is NOT KNOWN to be
 * @param knots the speed at which it is made; empty where it is not of one speed
 * @param reads what of a bed the reading takes: a search asks first what needs no skin to be measured
 */
public record Demand(String name, Check.Sense sense, Limit limit, ToDoubleFunction<Bed> reading,
                     String met, String notMet, Unread unread, Function<Bed, String> detail, Function<Bed, String> missing,
                     OptionalDouble knots, Reads reads) {
    private static final Function<Bed, String> NOTHING = bed -> "";

    /** What becomes of a place where the reading cannot be taken. Either way it is NOT KNOWN. */
    public enum Unread {
        /** No site is sought there. */
        RULES_OUT,
        /** A site may be there, to be looked at before cutting. */
        LEAVES_OPEN
    }

    /** What of a bed a reading takes. */
    public enum Reads {
        /** Where it is, and nothing else. */
        PLACE,
        /** What was measured there too. */
        BED,
        /** That, and many rays from there: dear. */
        RAYS
    }

    public Demand {
        if (sense != Check.Sense.AT_MOST && sense != Check.Sense.AT_LEAST) {
            throw new IllegalArgumentException("a demand is held to a most or a least, not " + sense);
        }
    }

    public static Demand atMost(String name, Limit limit, ToDoubleFunction<Bed> reading, String met, String notMet) {
        return new Demand(name, Check.Sense.AT_MOST, limit, reading, met, notMet, Unread.RULES_OUT, NOTHING, NOTHING, OptionalDouble.empty(), Reads.BED);
    }

    public static Demand atLeast(String name, Limit limit, ToDoubleFunction<Bed> reading, String met, String notMet) {
        return new Demand(name, Check.Sense.AT_LEAST, limit, reading, met, notMet, Unread.RULES_OUT, NOTHING, NOTHING, OptionalDouble.empty(), Reads.BED);
    }

    /** The same, where a place whose reading cannot be taken may still have a site. */
    public Demand leavingOpen() {
        return new Demand(name, sense, limit, reading, met, notMet, Unread.LEAVES_OPEN, detail, missing, knots, reads);
    }

    /** The same, whose reading takes of a bed where it is and nothing else. */
    public Demand ofPlaceAlone() {
        return new Demand(name, sense, limit, reading, met, notMet, unread, detail, missing, knots, Reads.PLACE);
    }

    /** The same, whose reading follows many rays. */
    public Demand byRays() {
        return new Demand(name, sense, limit, reading, met, notMet, unread, detail, missing, knots, Reads.RAYS);
    }

    /** The same with more to say of a place. */
    public Demand telling(Function<Bed, String> more) {
        return new Demand(name, sense, limit, reading, met, notMet, unread, more, missing, knots, reads);
    }

    /** The same where the reading may be a part of the answer; a place that keeps to it there may still have a site. */
    public Demand leavingOut(Function<Bed, String> what) {
        return new Demand(name, sense, limit, reading, met, notMet, Unread.LEAVES_OPEN, detail, what, knots, reads);
    }

    /** The same at a speed [kn]. */
    public Demand at(double speed) {
        return new Demand(name, sense, limit, reading, met, notMet, unread, detail, missing, OptionalDouble.of(speed), reads);
    }

    /** Whether a site may be where the reading is as it is. */
    public boolean allows(Bed bed) {
        double shortfall = shortfall(bed);
        return shortfall <= 0 || Double.isNaN(shortfall) && unread == Unread.LEAVES_OPEN;
    }

    /** Demand over limit, or required over available; NaN when the reading cannot be taken, or is met only as far as it goes. */
    public double utilisation(Bed bed) {
        double utilisation = utilisationOf(reading.applyAsDouble(bed));
        return utilisation <= 1 && !missing.apply(bed).isEmpty() ? Double.NaN : utilisation;
    }

    /** Of a reading. */
    public double utilisationOf(double value) {
        if (sense == Check.Sense.AT_MOST) {
            return Math.abs(value) / limit.value();
        }
        return value <= 0 ? Double.POSITIVE_INFINITY : limit.value() / value;
    }

    /**
     * By how much of the limit the reading, as far as it goes, misses it; 0 on the limit, negative when met. Unlike the
     * utilisation of a minimum it is linear in the reading, so its zero can be interpolated.
     */
    public double shortfall(Bed bed) {
        return shortfallOf(reading.applyAsDouble(bed));
    }

    /** Of a reading. */
    public double shortfallOf(double value) {
        return sense == Check.Sense.AT_MOST
            ? Math.abs(value) / limit.value() - 1 : 1 - value / limit.value();
    }

    /** The check of a place. */
    public Check check(Bed bed) {
        double value = reading.applyAsDouble(bed);
        double utilisation = utilisationOf(value);
        String left = missing.apply(bed);
        if (Double.isNaN(utilisation)) {
            String reason = left.isEmpty() ? detail.apply(bed) : left;
            return unmeasured(reason.isEmpty() ? "It could not be measured here." : reason);
        }
        boolean serves = utilisation <= 1;
        if (serves && !left.isEmpty()) {
            return unmeasured(with(with(left, "As far as it is known: " + met), detail.apply(bed)));
        }
        double shown = sense == Check.Sense.AT_MOST ? Math.abs(value) : value;
        return new Check(name, sense, Double.isInfinite(value) ? Double.NaN : limit.measure().shown(shown),
            limit.measure().shown(limit.value()), limit.measure().unit(), utilisation,
            serves ? Verdict.MET : Verdict.NOT_MET, limit.source(), with(serves ? met : notMet, detail.apply(bed)), knots);
    }

    private static String with(String sentence, String more) {
        return more.isEmpty() ? sentence : sentence + " " + more;
    }

    /** The check of a place where it cannot be made. */
    public Check unmeasured(String reason) {
        return new Check(name, sense, Double.NaN, limit.measure().shown(limit.value()),
            limit.measure().unit(), Double.NaN, Verdict.NOT_KNOWN, limit.source(), reason, knots);
    }
}
