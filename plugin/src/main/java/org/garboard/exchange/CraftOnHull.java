package org.garboard.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.exchange.xml.job.CentreOfGravity;
import org.garboard.exchange.xml.job.Craft;
import org.garboard.exchange.xml.job.Job;
import org.garboard.exchange.xml.job.Length;
import org.garboard.exchange.xml.job.SeaTrial;
import org.garboard.exchange.xml.job.Weight;
import org.garboard.flow.water.Water;
import org.garboard.hull.Hull;
import org.garboard.hull.HullLine;
import org.garboard.hydrostatics.Floating;
import org.garboard.hydrostatics.Hydrostatics;
import org.garboard.hydrostatics.WaterSurface;
import org.garboard.units.FixedDecimal;
import org.glassfish.jaxb.core.Locatable;

/**
 * What a job tells and only her hull can show to be wrong: a draught whose waterline misses her, a centre of gravity outside the boat,
 * more weight than she carries.
 */
public final class CraftOnHull {
    /** Hulls are looked at so many places along: the sheer runs fair between. */
    private static final int LOOKS = 200;
    /** The water stays so far below the lowest of the sheer, for rounding [m]. */
    private static final double BELOW_SHEER = 1e-4;

    private final String file;
    private final XmlReading reading;
    private final Optional<Job> job;
    private final Optional<Craft> craft;
    private final double density;
    private final List<FileFault> faults = new ArrayList<>();

    private CraftOnHull(String file, XmlReading reading) {
        this.file = file;
        this.reading = reading;
        this.job = reading.bean(Job.class);
        this.craft = job.flatMap(told -> Optional.ofNullable(told.getCraft()));
        this.density = craft.map(CraftMapping::toCraft)
            .map(told -> new Water(told.water().celsius(), told.water().salinity()).density()).orElse(Double.NaN);
    }

    /**
     * Everything that is wrong, in the order of the file.
     *
     * @param fileName for the messages
     * @param job the whole file, which {@link JobFile} read without a fault
     */
    public static List<FileFault> faults(String fileName, byte[] job, Hull hull) {
        try {
            CraftOnHull told = new CraftOnHull(fileName, XmlReading.of(XmlKind.JOB, fileName, job));
            told.job.ifPresent(all -> told.draught(all.getDraught(), hull));
            told.craft.ifPresent(craft -> told.check(craft, hull));
            return told.faults;
        } catch (FaultyFile e) {
            return e.faults();
        }
    }

    private void check(Craft craft, Hull hull) {
        if (craft.getWeights() != null) {
            carried(craft.getWeights().getFull(), hull);
            centre(craft.getWeights().getCentreOfGravity(), hull);
        }
        if (craft.getSeaTrials() != null) {
            double most = hull.bottomEnd() - hull.forwardEnd();
            for (SeaTrial trial : craft.getSeaTrials().getSeaTrial()) {
                Length keel = trial.getWettedKeel();
                if (keel != null && Lengths.metres(keel) > most) {
                    outside("wetted-keel", keel, Lengths.metres(keel), 0, most);
                }
            }
        }
    }

    /** The waterline must lie above her keel somewhere and below her sheer everywhere. */
    private void draught(Length draught, Hull hull) {
        double metres = Lengths.metres(draught);
        double sheer = lowestSheer(hull);
        if (!(metres > lowestKeel(hull) && metres < sheer)) {
            add(draught, "<draught> is " + draught.getValue().toPlainString() + " " + draught.getUnit().value()
                + ": a waterline so high above the base line does not cut the hull; it must lie between " + FixedDecimal.format(lowestKeel(hull), 3)
                + " m, the lowest of her keel line, and " + FixedDecimal.format(sheer, 3) + " m, the lowest of her sheer");
        }
    }

    private static double lowestSheer(Hull hull) {
        double sheer = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= LOOKS; i++) {
            sheer = Math.min(sheer, highest(hull, x(hull, i)));
        }
        return sheer;
    }

    private static double lowestKeel(Hull hull) {
        double low = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= LOOKS; i++) {
            low = Math.min(low, hull.keel().z(x(hull, i)));
        }
        return low;
    }

    private void carried(Weight full, Hull hull) {
        Floating deep = Hydrostatics.of(hull, WaterSurface.level(lowestSheer(hull) - BELOW_SHEER));
        if (deep instanceof Hydrostatics figures && TransducerMapping.kilograms(full) > figures.mass(density)) {
            add(full, "<full> is " + full.getValue().toPlainString() + " " + full.getUnit() + "; her sheer is under water with "
                + FixedDecimal.format(figures.mass(density), 0) + " kg, so it must be less");
        }
    }

    private void centre(CentreOfGravity centre, Hull hull) {
        if (centre.getX() != null) {
            outside("x", centre.getX(), Lengths.metres(centre.getX()), hull.forwardEnd(), hull.afterEnd());
        } else {
            outside("ahead-of-after-end", centre.getAheadOfAfterEnd(), Lengths.metres(centre.getAheadOfAfterEnd()),
                hull.foot() - hull.afterEnd(), hull.foot() - hull.forwardEnd());
        }
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i <= LOOKS; i++) {
            high = Math.max(high, highest(hull, x(hull, i)));
        }
        outside("above-base", centre.getAboveBase(), Lengths.metres(centre.getAboveBase()), lowestKeel(hull), high);
    }

    private static double x(Hull hull, int look) {
        return hull.firstSection() + (hull.bottomEnd() - hull.firstSection()) * look / LOOKS;
    }

    private static double highest(Hull hull, double x) {
        double high = Double.NEGATIVE_INFINITY;
        for (HullLine line : hull.lines()) {
            high = Math.max(high, line.z(x));
        }
        return high;
    }

    private void outside(String name, Length length, double metres, double least, double most) {
        if (!(metres >= least && metres <= most)) {
            add(length, "<" + name + "> is " + length.getValue().toPlainString() + " " + length.getUnit().value()
                + ", which is outside the boat; it must be from " + FixedDecimal.format(least, 3) + " to " + FixedDecimal.format(most, 3) + " m");
        }
    }

    private void add(Locatable element, String words) {
        faults.add(reading.position(element.sourceLocation()).fault(file, words));
    }
}
