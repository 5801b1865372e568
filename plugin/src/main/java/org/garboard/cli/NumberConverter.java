package org.garboard.cli;

import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A plain number on the command line, in the unit that its option names. */
final class NumberConverter implements ITypeConverter<Double> {
    private static final Pattern NUMBER = Pattern.compile("[+-]?(?:[0-9]{1,9}\\.?[0-9]*|\\.[0-9]+)");

    @Override
    public Double convert(String text) {
        return number(text);
    }

    static double number(String text) {
        if (!NUMBER.matcher(text).matches()) {
            throw new TypeConversionException("\"" + text + "\" is not a number; write it with digits and a decimal point, such as 1.5");
        }
        return Double.parseDouble(text);
    }
}
