package org.garboard.exchange;

import java.util.ArrayList;
import java.util.List;
import org.garboard.exchange.xml.job.Length;
import org.garboard.units.FixedDecimal;
import org.glassfish.jaxb.core.Locatable;

/** What is found wrong with the values of a job, each at its tag. A value that is missing has been told already and is passed over. */
final class JobFaults {
    private static final double MM = 1000;

    private final String file;
    private final XmlReading reading;
    private final List<FileFault> faults = new ArrayList<>();

    JobFaults(String file, XmlReading reading) {
        this.file = file;
        this.reading = reading;
    }

    List<FileFault> all() {
        return List.copyOf(faults);
    }

    void add(Locatable element, String words) {
        faults.add(reading.position(element.sourceLocation()).fault(file, words));
    }

    /** @param most [m] */
    void aboveZero(String name, Length length, double most) {
        if (Lengths.isWhole(length) && !(length.getValue().signum() > 0 && Lengths.metres(length) <= most)) {
            tell(name, length, "more than 0 and at most " + bound(most));
        }
    }

    /** @param most [m] */
    void fromZero(String name, Length length, double most) {
        fromZero(name, length, most, bound(most));
    }

    /** @param mostWords what the most is, "the width, 80 mm" */
    void fromZero(String name, Length length, double most, String mostWords) {
        // 1e-9 m: half of a width in inches is not always the same double as the radius in inches
        if (Lengths.isWhole(length) && !(length.getValue().signum() >= 0 && Lengths.metres(length) <= most + 1e-9)) {
            tell(name, length, "from 0 to " + mostWords);
        }
    }

    /** @param least whole metres, as is the most */
    void between(String name, Length length, double least, double most) {
        if (Lengths.isWhole(length) && !(Lengths.metres(length) >= least && Lengths.metres(length) <= most)) {
            tell(name, length, "from " + FixedDecimal.format(least, 0) + " to " + FixedDecimal.format(most, 0) + " m");
        }
    }

    private void tell(String name, Length length, String range) {
        add(length, "<" + name + "> is " + Lengths.asWritten(length) + "; it must be " + range);
    }

    private static String bound(double metres) {
        return metres < 1 ? FixedDecimal.format(metres * MM, 0) + " mm" : FixedDecimal.format(metres, 0) + " m";
    }
}
