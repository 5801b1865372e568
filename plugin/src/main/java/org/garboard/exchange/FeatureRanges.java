package org.garboard.exchange;

import java.util.HashSet;
import java.util.Set;
import org.garboard.exchange.xml.job.Feature;
import org.garboard.exchange.xml.job.FeaturePlace;
import org.garboard.exchange.xml.job.Features;
import org.garboard.exchange.xml.job.Fitting;
import org.garboard.exchange.xml.job.Strake;

/** The ranges of strakes and fittings; like {@link JobRanges}, the upper ends catch wrong units. */
final class FeatureRanges {
    private static final double LONGEST = 20;
    private static final double WIDEST = 5;
    private static final double WIDEST_STRAKE = 1;

    private final JobFaults faults;

    FeatureRanges(JobFaults faults) {
        this.faults = faults;
    }

    void check(Features features) {
        Set<String> seen = new HashSet<>();
        for (Feature feature : features.getStrakeOrFitting()) {
            if (feature.getName() != null && feature.getSide() != null
                    && !seen.add(feature.getSide() + " " + feature.getName())) {
                faults.add(feature, "a feature named \"" + feature.getName() + "\" stands in <features> already on that side; name each apart");
            }
            if (feature instanceof Strake strake) {
                strake.getAt().forEach(this::place);
                faults.aboveZero("width", strake.getWidth(), WIDEST_STRAKE);
                faults.aboveZero("height", strake.getHeight(), WIDEST_STRAKE);
            } else if (feature instanceof Fitting fitting) {
                place(fitting.getAt());
                faults.aboveZero("length", fitting.getLength(), LONGEST);
                faults.aboveZero("width", fitting.getWidth(), WIDEST);
                faults.fromZero("stands-out", fitting.getStandsOut(), WIDEST);
            }
        }
    }

    /** Of one place, wherever it stands in a job. */
    void place(FeaturePlace place) {
        if (place != null) {
            faults.fromZero("ahead-of-after-end", place.getAheadOfAfterEnd(), 100);
            faults.fromZero("y", place.getY(), 10);
            faults.fromZero("girth", place.getGirth(), 20);
        }
    }
}
