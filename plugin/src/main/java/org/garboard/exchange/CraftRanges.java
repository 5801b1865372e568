package org.garboard.exchange;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.garboard.exchange.xml.job.Angle;
import org.garboard.exchange.xml.job.Craft;
import org.garboard.exchange.xml.job.Drive;
import org.garboard.exchange.xml.job.DriveKind;
import org.garboard.exchange.xml.job.Knots;
import org.garboard.exchange.xml.job.Length;
import org.garboard.exchange.xml.job.SeaTrial;
import org.garboard.exchange.xml.job.Speed;
import org.garboard.exchange.xml.job.Speeds;
import org.garboard.exchange.xml.job.Weight;
import org.garboard.exchange.xml.job.Weights;
import org.garboard.units.FixedDecimal;
import org.glassfish.jaxb.core.Locatable;

/** The ranges of a craft, as far as they can be told without her hull; like {@link JobRanges}, the upper ends catch wrong units. */
final class CraftRanges {
    private static final BigDecimal MOST_KNOTS = new BigDecimal(100);
    private static final BigDecimal WHOLE = new BigDecimal(100);
    /** Shares are rounded by whoever writes them down. */
    private static final BigDecimal ROUNDED = new BigDecimal("0.5");
    private static final double MOST_KG = 1_000_000;
    private static final double MOST_DIAMETER = 5;
    private static final double MOST_THRUST_HEIGHT = 3;
    private static final double LONGEST = 100;

    private final JobFaults faults;

    CraftRanges(JobFaults faults) {
        this.faults = faults;
    }

    void check(Craft craft) {
        if (craft.getDrive() != null) {
            drive(craft.getDrive());
        }
        if (craft.getWeights() != null) {
            weights(craft.getWeights());
        }
        if (craft.getSpeeds() != null) {
            speeds(craft.getSpeeds());
        }
        if (craft.getWater() != null) {
            if (craft.getWater().getTemperature() != null) {
                between("temperature", craft.getWater().getTemperature(), craft.getWater().getTemperature().getValue(), 0, 40, "C");
            }
            if (craft.getWater().getSalinity() != null) {
                between("salinity", craft.getWater().getSalinity(), craft.getWater().getSalinity().getValue(), 0, 42, "g/kg");
            }
        }
        if (craft.getTrimBand() != null) {
            angle("bow-down", craft.getTrimBand().getBowDown(), 0, 5);
            angle("bow-up", craft.getTrimBand().getBowUp(), 0, 5);
        }
        if (craft.getSeaTrials() != null) {
            trials(craft.getSeaTrials().getSeaTrial());
        }
    }

    private void drive(Drive drive) {
        Length diameter = drive.getPropellerDiameter();
        faults.aboveZero("propeller-diameter", diameter, MOST_DIAMETER);
        faults.aboveZero("apart", drive.getApart(), MOST_DIAMETER);
        if (drive.getApart() != null && drive.getNumber() == 1) {
            faults.add(drive.getApart(), "one engine stands apart from none: leave <apart> away, or write how many there are");
        }
        if (drive.getKind() == DriveKind.JET && diameter != null) {
            faults.add(diameter, "a jet has no propeller: leave <propeller-diameter> away, or write another kind of drive");
        }
        if (drive.getKind() == DriveKind.JET && drive.getHand() != null) {
            faults.add(drive, "a jet has no propeller to turn: leave hand away, or write another kind of drive");
        }
        if (drive.getThrustLine() != null) {
            Length height = drive.getThrustLine().getAboveTransomFoot();
            faults.between("above-transom-foot", height, -MOST_THRUST_HEIGHT, MOST_THRUST_HEIGHT);
            angle("inclination", drive.getThrustLine().getInclination(), -20, 20);
        }
    }

    private void weights(Weights weights) {
        mass("light", weights.getLight());
        mass("full", weights.getFull());
        if (isWhole(weights.getLight()) && isWhole(weights.getFull())
                && TransducerMapping.kilograms(weights.getFull()) < TransducerMapping.kilograms(weights.getLight())) {
            faults.add(weights.getFull(), "<full> is " + asWritten(weights.getFull()) + " and <light> " + asWritten(weights.getLight())
                + "; full must not be less than light");
        }
    }

    private void mass(String name, Weight weight) {
        if (isWhole(weight) && !(weight.getValue().signum() > 0 && TransducerMapping.kilograms(weight) <= MOST_KG)) {
            faults.add(weight, "<" + name + "> is " + asWritten(weight) + "; it must be more than 0 and at most " + FixedDecimal.format(MOST_KG, 0) + " kg");
        }
    }

    private void speeds(Speeds speeds) {
        Set<String> names = new HashSet<>();
        Set<BigDecimal> knots = new HashSet<>();
        BigDecimal together = BigDecimal.ZERO;
        int shares = 0;
        for (Speed speed : speeds.getSpeed()) {
            knots("speed", speed, knots);
            if (speed.getName() != null && !names.add(speed.getName())) {
                faults.add(speed, "a speed named \"" + speed.getName() + "\" stands in <speeds> already; name each apart");
            }
            if (speed.getShare() != null) {
                shares++;
                together = together.add(speed.getShare());
                between("share", speed, speed.getShare(), 0, 100, "per cent");
            }
        }
        if (shares > 0 && shares < speeds.getSpeed().size()) {
            faults.add(speeds, shares + " of " + speeds.getSpeed().size() + " speeds tell their share; tell it for every speed, or for none");
        } else if (shares > 0 && together.subtract(WHOLE).abs().compareTo(ROUNDED) > 0) {
            faults.add(speeds, "the shares of the speeds are " + together.stripTrailingZeros().toPlainString() + " per cent together; they must be 100");
        }
    }

    private void trials(List<SeaTrial> trials) {
        Set<BigDecimal> knots = new HashSet<>();
        for (SeaTrial trial : trials) {
            knots("at", trial.getAt(), knots);
            angle("trim", trial.getTrim(), -5, 20);
            Length keel = trial.getWettedKeel();
            faults.aboveZero("wetted-keel", keel, LONGEST);
            if (trial.getTrim() == null && keel == null) {
                faults.add(trial, "<sea-trial> tells nothing that was measured; write <trim>, <wetted-keel> or both");
            }
        }
    }

    private void knots(String name, Knots speed, Set<BigDecimal> seen) {
        if (speed == null || speed.getValue() == null) {
            return;
        }
        BigDecimal value = speed.getValue();
        if (!(value.signum() > 0 && value.compareTo(MOST_KNOTS) <= 0)) {
            faults.add(speed, "<" + name + "> is " + value.toPlainString() + " kn; it must be more than 0 and at most 100 kn");
        } else if (!seen.add(value.stripTrailingZeros())) {
            faults.add(speed, "<" + name + "> of " + value.toPlainString() + " kn stands there already; write each speed once");
        }
    }

    private void angle(String name, Angle angle, int least, int most) {
        if (angle != null) {
            between(name, angle, angle.getValue(), least, most, "deg");
        }
    }

    private void between(String name, Locatable element, BigDecimal value, int least, int most, String unit) {
        if (value != null && (value.compareTo(BigDecimal.valueOf(least)) < 0 || value.compareTo(BigDecimal.valueOf(most)) > 0)) {
            faults.add(element, (unit.equals("per cent") ? name : "<" + name + ">") + " is " + value.toPlainString() + " " + unit + "; it must be from "
                + least + " to " + most + " " + unit);
        }
    }

    private static boolean isWhole(Weight weight) {
        return weight != null && weight.getValue() != null && weight.getUnit() != null;
    }

    private static String asWritten(Weight weight) {
        return weight.getValue().toPlainString() + " " + weight.getUnit();
    }
}
