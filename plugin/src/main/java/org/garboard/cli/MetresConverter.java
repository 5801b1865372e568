package org.garboard.cli;

import org.garboard.units.LengthNotation;
import org.garboard.units.LengthReading.Unreadable;
import org.garboard.units.LengthReading;
import org.garboard.units.LengthUnit;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A length on the command line [m]: bare numbers are metres; {@code 450mm} and {@code 2-3-4} are read too. */
final class MetresConverter implements ITypeConverter<Double> {

    @Override
    public Double convert(String text) {
        return metres(text);
    }

    static double metres(String text) {
        if (text.indexOf(',') >= 0) {
            // a comma may part two lengths or a length from its decimals; which, nobody can tell
            throw new TypeConversionException("\"" + text + "\" has a comma; write metres with a decimal point, and a blank between lengths");
        }
        LengthReading reading = LengthNotation.in(LengthUnit.METRE).read(text);
        if (reading instanceof Unreadable fault) {
            throw new TypeConversionException("\"" + text + "\" " + fault.reason());
        }
        return reading.length().orElseThrow().metres();
    }
}
