package org.garboard.exchange;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import jakarta.xml.bind.JAXBElement;
import org.garboard.exchange.xml.job.Angle;
import org.garboard.exchange.xml.job.Job;
import org.garboard.exchange.xml.job.Length;
import org.garboard.exchange.xml.job.Limit;
import org.garboard.exchange.xml.job.Limits;
import org.garboard.exchange.xml.job.Mounts;
import org.garboard.exchange.xml.job.Pocket;
import org.garboard.exchange.xml.job.Table;
import org.garboard.exchange.xml.job.Transducer;
import org.garboard.exchange.xml.job.WayIn;
import org.garboard.mount.LimitName;
import org.garboard.mount.Mount;
import org.garboard.mount.Preference;
import org.garboard.units.FixedDecimal;
import org.glassfish.jaxb.core.Locatable;

/**
 * The ranges in which the values of a job must lie, as {@code garboard-job.xsd} tells them in
 * words: a schema cannot compare lengths in different units.
 *
 * <p>The upper ends are our choice: far beyond any boat's transducer, near enough to catch a
 * wrong unit. What is missing has been told already and is passed over.
 */
final class JobRanges {
    private static final double MOST_DRAUGHT = 10;
    private static final double MOST_BODY = 2;
    private static final double MOST_DEPTH = 1;
    private static final double MOST_GAP = 0.05;
    private static final BigDecimal MOST_INCLINATION_DEG = new BigDecimal(45);
    private static final BigDecimal LEAST_SLENDERNESS = new BigDecimal(2);
    private static final BigDecimal MOST_SLENDERNESS = new BigDecimal(8);
    private static final BigDecimal MOST_TRAILING_EDGE_LOWER_DEG = new BigDecimal(2);
    private static final BigDecimal MOST_LIMIT = new BigDecimal(100_000);
    private static final BigDecimal MOST_RAMP_RATIO = new BigDecimal(100);

    private final String file;
    private final XmlReading reading;
    private final List<FileFault> faults = new ArrayList<>();

    JobRanges(String file, XmlReading reading) {
        this.file = file;
        this.reading = reading;
    }

    List<FileFault> faults(Job job) {
        if (job.getLike() != null) {
            add(job, "the job says like=\"" + job.getLike() + "\": it began with the figures of that demo boat; when each of them is"
                + " your boat's, take like away");
        }
        aboveZero("draught", job.getDraught(), MOST_DRAUGHT);
        if (job.getTable() != null) {
            checkTable(job.getTable());
        }
        if (job.getTransducer() != null) {
            checkTransducer(job.getTransducer());
        }
        if (job.getMounts() != null) {
            checkMounts(job.getMounts());
        }
        if (job.getFeatures() != null) {
            faults.addAll(new FeatureRanges(file, reading).faults(job.getFeatures()));
        }
        if (job.getCraft() != null) {
            faults.addAll(new CraftRanges(file, reading).faults(job.getCraft()));
        }
        faults.addAll(new ParticularsRanges(file, reading).faults(job));
        if (job.getLimits() != null) {
            checkLimits(job.getLimits());
        }
        if (job.getPocket() != null) {
            checkPocket(job.getPocket());
        }
        checkWaysThrough(job);
        return faults;
    }

    private void checkWaysThrough(Job job) {
        if (job.getThroughHull() != null) {
            fromZero("bedding", job.getThroughHull().getBedding(), MOST_GAP, millimetres(MOST_GAP));
            aboveZero("chord-error", job.getThroughHull().getChordError(), MOST_DEPTH);
        }
        if (job.getFairing() != null) {
            aboveZero("face-height", job.getFairing().getFaceHeight(), MOST_DEPTH);
            BigDecimal slenderness = job.getFairing().getSlenderness();
            if (slenderness != null && (slenderness.compareTo(LEAST_SLENDERNESS) < 0 || slenderness.compareTo(MOST_SLENDERNESS) > 0)) {
                add(job.getFairing(), "<slenderness> is " + slenderness.toPlainString()
                    + "; write the block's length to its width, from 2 to 8");
            }
            Angle lower = job.getFairing().getTrailingEdgeLower();
            if (lower != null && lower.getValue() != null) {
                within("trailing-edge-lower", lower, lower.getValue(), MOST_TRAILING_EDGE_LOWER_DEG, "deg");
            }
        }
    }

    private void checkTable(Table table) {
        String path = table.getFile();
        if (path == null || path.isEmpty()) {
            return;
        }
        String remedy = "; name a file in the folder of the job or below it, such as offsets.csv";
        if (path.indexOf('\\') >= 0) {
            add(table, "table file \"" + path + "\" has a backslash; part folders with /");
        } else if (path.startsWith("/") || path.matches("[A-Za-z]:.*")) {
            add(table, "table file \"" + path + "\" is an absolute path" + remedy);
        } else if (List.of(path.split("/")).contains("..")) {
            add(table, "table file \"" + path + "\" leaves the folder of the job" + remedy);
        }
    }

    private void checkTransducer(Transducer body) {
        aboveZero("length", body.getLength(), MOST_BODY);
        aboveZero("width", body.getWidth(), MOST_BODY);
        aboveZero("height", body.getHeight(), MOST_BODY);
        if (Lengths.isWhole(body.getLength()) && Lengths.isWhole(body.getWidth())) {
            double width = Lengths.metres(body.getWidth());
            double shorter = Math.min(Lengths.metres(body.getLength()), width);
            fromZero("corner-radius", body.getCornerRadius(), shorter / 2,
                "half the shorter of length and width, " + millimetres(shorter / 2));
            fromZero("stem-diameter", body.getStemDiameter(), width, "the width, " + millimetres(width));
        }
        Angle lean = body.getElementInclination();
        if (lean != null && lean.getValue() != null) {
            within("element-inclination", lean, lean.getValue(), MOST_INCLINATION_DEG, "deg");
        }
    }

    private void checkMounts(Mounts mounts) {
        Set<String> seen = new HashSet<>();
        for (JAXBElement<WayIn> mount : mounts.getTransomMountOrInHullOrFlushThroughHull()) {
            if (!seen.add(mount.getName().getLocalPart())) {
                add(mount.getValue(), "this mount stands in <mounts> already; each may stand there once");
            }
        }
        List<Mount> listed = MountWords.mounts(mounts);
        List<Mount> usual = Preference.LEAST_INVASIVE.order(listed);
        if (mounts.getPreference() == null && !listed.equals(usual)) {
            add(mounts, "<mounts> lists " + words(listed) + " without saying which is preferred; write preference=\"as-listed\" to prefer the first, or"
                + " list " + words(usual) + ", the least invasive first");
        }
    }

    private static String words(List<Mount> mounts) {
        return mounts.stream().map(Mount::word).collect(Collectors.joining(", "));
    }

    private void checkLimits(Limits limits) {
        Set<LimitName> seen = new HashSet<>();
        for (Limit limit : limits.getLimit()) {
            if (limit.getOf() == null || limit.getUnit() == null || limit.getValue() == null) {
                continue;
            }
            LimitName name = LimitName.of(limit.getOf().value());
            String unit = name.own().measure().unit();
            if (!seen.add(name)) {
                add(limit, "the limit of " + name.word() + " stands in <limits> already; each may stand there once");
            }
            if (!limit.getUnit().equals(unit)) {
                add(limit, "the limit of " + name.word() + " is in " + limit.getUnit() + "; it is measured in " + unit);
            } else if (limit.getValue().signum() <= 0 || limit.getValue().compareTo(MOST_LIMIT) > 0) {
                add(limit, "the limit of " + name.word() + " is " + limit.getValue().toPlainString() + " " + unit
                    + "; it must be more than 0 and at most 100000; the program's own is "
                    + FixedDecimal.format(name.own().measure().shown(name.own().value()), 1) + " " + unit);
            }
        }
    }

    private void checkPocket(Pocket pocket) {
        aboveZero("depth", pocket.getDepth(), MOST_DEPTH);
        fromZero("gap", pocket.getGap(), MOST_GAP, millimetres(MOST_GAP));
        BigDecimal ratio = pocket.getRampRatio();
        if (ratio != null && ratio.signum() != 0
                && (ratio.compareTo(BigDecimal.ONE) < 0 || ratio.compareTo(MOST_RAMP_RATIO) > 0)) {
            add(pocket, "<ramp-ratio> is " + ratio.toPlainString()
                + "; write the ramp's length to its height, from 1 to 100 (8 for 1:8), or 0 for no ramps");
        }
    }

    private void aboveZero(String name, Length length, double most) {
        if (Lengths.isWhole(length) && !(length.getValue().signum() > 0 && Lengths.metres(length) <= most)) {
            add(length, "<" + name + "> is " + asWritten(length) + "; it must be more than 0 and at most "
                + FixedDecimal.format(most, 0) + " m");
        }
    }

    private void fromZero(String name, Length length, double most, String mostWords) {
        // 1e-9 m: half of a width in inches is not always the same double as the radius in inches
        if (Lengths.isWhole(length) && !(length.getValue().signum() >= 0 && Lengths.metres(length) <= most + 1e-9)) {
            add(length, "<" + name + "> is " + asWritten(length) + "; it must be from 0 to " + mostWords);
        }
    }

    private void within(String name, Locatable element, BigDecimal value, BigDecimal most, String unit) {
        if (value.signum() < 0 || value.compareTo(most) > 0) {
            add(element, "<" + name + "> is " + value.toPlainString() + " " + unit + "; it must be from 0 to "
                + most.toPlainString() + " " + unit);
        }
    }

    private static String asWritten(Length length) {
        return length.getValue().toPlainString() + " " + length.getUnit().value();
    }

    private static String millimetres(double metres) {
        String fixed = FixedDecimal.format(metres * 1000, 3);
        return fixed.replaceAll("\\.?0+$", "") + " mm";
    }

    private void add(Locatable element, String words) {
        faults.add(reading.position(element.sourceLocation()).fault(file, words));
    }
}
