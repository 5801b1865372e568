package org.garboard.cli;

import org.garboard.lines.DrawnLine.Diagonal;
import org.garboard.units.Angle;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A diagonal on the command line: {@code Z:DEG}, its height on the centreline and its angle below the horizontal. */
final class DiagonalConverter implements ITypeConverter<Diagonal> {

    @Override
    public Diagonal convert(String text) {
        return diagonal(text);
    }

    static Diagonal diagonal(String text) {
        String[] parts = text.split(":", -1);
        if (parts.length != 2) {
            throw new TypeConversionException("\"" + text + "\" is not a diagonal; write Z:DEG, such as 0.6:35 for one that"
                + " starts on the centreline 0.6 m above base and runs 35 degrees below the horizontal");
        }
        double degrees = NumberConverter.number(parts[1]);
        if (!(degrees > 0 && degrees < 90)) {
            throw new TypeConversionException("\"" + text + "\" has an angle of " + parts[1]
                + " degrees; a diagonal runs outward and down, more than 0 and less than 90 degrees below the horizontal");
        }
        return new Diagonal(MetresConverter.metres(parts[0]), Angle.ofDegrees(degrees));
    }
}
