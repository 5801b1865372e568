package org.garboard.exchange;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.garboard.exchange.xml.job.Feature;
import org.garboard.exchange.xml.job.FeaturePlace;
import org.garboard.exchange.xml.job.Features;
import org.garboard.exchange.xml.job.Fitting;
import org.garboard.exchange.xml.job.Length;
import org.garboard.exchange.xml.job.Strake;
import org.garboard.units.FixedDecimal;
import org.glassfish.jaxb.core.Locatable;

/** The ranges of strakes and fittings; like {@link JobRanges}, the upper ends catch wrong units. */
final class FeatureRanges {
    private static final double LONGEST = 20;
    private static final double WIDEST = 5;
    private static final double WIDEST_STRAKE = 1;

    private final String file;
    private final XmlReading reading;
    private final List<FileFault> faults = new ArrayList<>();

    FeatureRanges(String file, XmlReading reading) {
        this.file = file;
        this.reading = reading;
    }

    List<FileFault> faults(Features features) {
        Set<String> seen = new HashSet<>();
        for (Feature feature : features.getStrakeOrFitting()) {
            if (feature.getName() != null && feature.getSide() != null
                    && !seen.add(feature.getSide() + " " + feature.getName())) {
                add(feature, "a feature named \"" + feature.getName() + "\" stands in <features> already on that side; name each apart");
            }
            if (feature instanceof Strake strake) {
                strake.getAt().forEach(this::place);
                aboveZero("width", strake.getWidth(), WIDEST_STRAKE);
                aboveZero("height", strake.getHeight(), WIDEST_STRAKE);
            } else if (feature instanceof Fitting fitting) {
                place(fitting.getAt());
                aboveZero("length", fitting.getLength(), LONGEST);
                aboveZero("width", fitting.getWidth(), WIDEST);
                fromZero("stands-out", fitting.getStandsOut(), WIDEST);
            }
        }
        return faults;
    }

    /** Of one place, wherever it stands in a job. */
    List<FileFault> place(FeaturePlace place) {
        if (place != null) {
            fromZero("ahead-of-after-end", place.getAheadOfAfterEnd(), 100);
            fromZero("y", place.getY(), 10);
            fromZero("girth", place.getGirth(), 20);
        }
        return faults;
    }

    private void aboveZero(String name, Length length, double most) {
        if (Lengths.isWhole(length) && !(length.getValue().signum() > 0 && Lengths.metres(length) <= most)) {
            tell(name, length, "more than 0 and at most ", most);
        }
    }

    private void fromZero(String name, Length length, double most) {
        if (Lengths.isWhole(length) && !(length.getValue().signum() >= 0 && Lengths.metres(length) <= most)) {
            tell(name, length, "from 0 to ", most);
        }
    }

    private void tell(String name, Length length, String range, double most) {
        add(length, "<" + name + "> is " + length.getValue().toPlainString() + " " + length.getUnit().value()
            + "; it must be " + range + FixedDecimal.format(most, 0) + " m");
    }

    private void add(Locatable element, String words) {
        faults.add(reading.position(element.sourceLocation()).fault(file, words));
    }
}
