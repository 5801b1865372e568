package org.garboard.exchange;

import jakarta.xml.bind.JAXBElement;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.garboard.exchange.xml.job.Angle;
import org.garboard.exchange.xml.job.Beam;
import org.garboard.exchange.xml.job.Bracket;
import org.garboard.exchange.xml.job.BracketScrew;
import org.garboard.exchange.xml.job.Fairing;
import org.garboard.exchange.xml.job.Mounts;
import org.garboard.exchange.xml.job.Pocket;
import org.garboard.exchange.xml.job.ThroughHull;
import org.garboard.exchange.xml.job.Transducer;
import org.garboard.exchange.xml.job.WayIn;
import org.garboard.exchange.xml.job.Weight;
import org.garboard.mount.Mount;
import org.garboard.mount.Preference;
import org.garboard.units.FixedDecimal;
import org.glassfish.jaxb.core.Locatable;

/** The ranges of one transducer, of its mounts and of the wishes for them; like {@link JobRanges}, the upper ends catch wrong units. */
final class TransducerRanges {
    private static final double MOST_BODY = 2;
    private static final double MOST_DEPTH = 1;
    private static final double MOST_GAP = 0.05;
    private static final double MOST_ASIDE = 10;
    private static final double MOST_KG = 500;
    private static final BigDecimal MOST_KHZ = new BigDecimal(5000);
    private static final BigDecimal STRAIGHT_DEG = new BigDecimal(180);
    private static final BigDecimal MOST_INCLINATION_DEG = new BigDecimal(45);
    private static final BigDecimal LEAST_SLENDERNESS = new BigDecimal(2);
    private static final BigDecimal MOST_SLENDERNESS = new BigDecimal(8);
    private static final BigDecimal MOST_TRAILING_EDGE_LOWER_DEG = new BigDecimal(2);
    private static final BigDecimal MOST_RAMP_RATIO = new BigDecimal(100);

    private final JobFaults faults;

    TransducerRanges(JobFaults faults) {
        this.faults = faults;
    }

    void check(TransducerTask task) {
        task.transducer().ifPresent(this::body);
        task.transducer().ifPresent(this::details);
        task.mounts().ifPresent(this::mounts);
        task.pocket().ifPresent(this::pocket);
        task.throughHull().ifPresent(this::throughHull);
        task.fairing().ifPresent(this::fairing);
        task.bracket().ifPresent(this::bracket);
    }

    private void body(Transducer body) {
        faults.aboveZero("length", body.getLength(), MOST_BODY);
        faults.aboveZero("width", body.getWidth(), MOST_BODY);
        faults.aboveZero("height", body.getHeight(), MOST_BODY);
        if (Lengths.isWhole(body.getLength()) && Lengths.isWhole(body.getWidth())) {
            double width = Lengths.metres(body.getWidth());
            double shorter = Math.min(Lengths.metres(body.getLength()), width);
            faults.fromZero("corner-radius", body.getCornerRadius(), shorter / 2,
                "half the shorter of length and width, " + millimetres(shorter / 2));
            faults.fromZero("stem-diameter", body.getStemDiameter(), width, "the width, " + millimetres(width));
        }
        Angle lean = body.getElementInclination();
        if (lean != null && lean.getValue() != null) {
            within("element-inclination", lean, lean.getValue(), MOST_INCLINATION_DEG);
        }
    }

    private void details(Transducer body) {
        faults.aboveZero("stem-length", body.getStemLength(), 1);
        faults.aboveZero("connector-diameter", body.getConnectorDiameter(), 1);
        Weight weight = body.getWeight();
        if (weight != null && weight.getValue() != null && weight.getUnit() != null) {
            double kilograms = TransducerMapping.kilograms(weight);
            if (!(kilograms > 0 && kilograms <= MOST_KG)) {
                faults.add(weight, "<weight> is " + weight.getValue().toPlainString() + " " + weight.getUnit()
                    + "; it must be more than 0 and at most 500 kg");
            }
        }
        if (body.getSound() != null) {
            body.getSound().getBeam().forEach(this::beam);
        }
    }

    private void beam(Beam beam) {
        if (beam.getFrequency() != null && beam.getFrequency().getValue() != null
                && !(beam.getFrequency().getValue().signum() > 0 && beam.getFrequency().getValue().compareTo(MOST_KHZ) <= 0)) {
            faults.add(beam.getFrequency(), "<frequency> is " + beam.getFrequency().getValue().toPlainString()
                + " kHz; it must be more than 0 and at most 5000 kHz");
        }
        width("beam-width", beam.getBeamWidth());
        width("width-fore-and-aft", beam.getWidthForeAndAft());
        width("width-athwart", beam.getWidthAthwart());
    }

    private void width(String name, Angle angle) {
        if (angle != null && angle.getValue() != null && !(angle.getValue().signum() > 0 && angle.getValue().compareTo(STRAIGHT_DEG) < 0)) {
            faults.add(angle, "<" + name + "> is " + angle.getValue().toPlainString()
                + " deg; it must be more than 0 and less than 180 deg: the full width that the maker tells, at half power");
        }
    }

    private void mounts(Mounts mounts) {
        Set<String> seen = new HashSet<>();
        for (JAXBElement<WayIn> mount : mounts.getTransomMountOrInHullOrFlushThroughHull()) {
            if (!seen.add(mount.getName().getLocalPart())) {
                faults.add(mount.getValue(), "this mount stands in <mounts> already; each may stand there once");
            }
        }
        List<Mount> listed = MountWords.mounts(mounts);
        List<Mount> usual = Preference.LEAST_INVASIVE.order(listed);
        if (mounts.getPreference() == null && !listed.equals(usual)) {
            faults.add(mounts, "<mounts> lists " + words(listed) + " without saying which is preferred; write preference=\"as-listed\" to prefer the first, or"
                + " list " + words(usual) + ", the least invasive first");
        }
    }

    private static String words(List<Mount> mounts) {
        return mounts.stream().map(Mount::word).collect(Collectors.joining(", "));
    }

    private void pocket(Pocket pocket) {
        faults.aboveZero("depth", pocket.getDepth(), MOST_DEPTH);
        faults.fromZero("gap", pocket.getGap(), MOST_GAP);
        faults.aboveZero("aside", pocket.getAside(), MOST_ASIDE);
        BigDecimal ratio = pocket.getRampRatio();
        if (ratio != null && ratio.signum() != 0
                && (ratio.compareTo(BigDecimal.ONE) < 0 || ratio.compareTo(MOST_RAMP_RATIO) > 0)) {
            faults.add(pocket, "<ramp-ratio> is " + ratio.toPlainString()
                + "; write the ramp's length to its height, from 1 to 100 (8 for 1:8), or 0 for no ramps");
        }
    }

    private void throughHull(ThroughHull wish) {
        faults.fromZero("bedding", wish.getBedding(), MOST_GAP);
        faults.aboveZero("chord-error", wish.getChordError(), MOST_DEPTH);
    }

    private void fairing(Fairing fairing) {
        faults.aboveZero("face-height", fairing.getFaceHeight(), MOST_DEPTH);
        BigDecimal slenderness = fairing.getSlenderness();
        if (slenderness != null && (slenderness.compareTo(LEAST_SLENDERNESS) < 0 || slenderness.compareTo(MOST_SLENDERNESS) > 0)) {
            faults.add(fairing, "<slenderness> is " + slenderness.toPlainString()
                + "; write the block's length to its width, from 2 to 8");
        }
        Angle lower = fairing.getTrailingEdgeLower();
        if (lower != null && lower.getValue() != null) {
            within("trailing-edge-lower", lower, lower.getValue(), MOST_TRAILING_EDGE_LOWER_DEG);
        }
    }

    private void bracket(Bracket bracket) {
        faults.fromZero("face-below", bracket.getFaceBelow(), MOST_GAP);
        for (BracketScrew screw : bracket.getScrew()) {
            faults.fromZero("off-middle", screw.getOffMiddle(), MOST_DEPTH);
            faults.aboveZero("above-face", screw.getAboveFace(), MOST_DEPTH);
            faults.aboveZero("diameter", screw.getDiameter(), MOST_GAP);
        }
    }

    private void within(String name, Locatable element, BigDecimal degrees, BigDecimal most) {
        if (degrees.signum() < 0 || degrees.compareTo(most) > 0) {
            faults.add(element, "<" + name + "> is " + degrees.toPlainString() + " deg; it must be from 0 to " + most.toPlainString() + " deg");
        }
    }

    private static String millimetres(double metres) {
        String fixed = FixedDecimal.format(metres * 1000, 3);
        return fixed.replaceAll("\\.?0+$", "") + " mm";
    }
}
