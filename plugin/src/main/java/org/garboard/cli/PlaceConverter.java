package org.garboard.cli;

import org.garboard.siting.PlanPoint;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A place on the command line: {@code X,Y} in metres, x aft of the table's origin, y to starboard, port negative. */
final class PlaceConverter implements ITypeConverter<PlanPoint> {

    @Override
    public PlanPoint convert(String text) {
        String[] parts = text.split(",", -1);
        if (parts.length != 2) {
            throw new TypeConversionException("\"" + text + "\" is not a place; write X,Y in metres with decimal points, such as 5.2,-0.3");
        }
        return new PlanPoint(MetresConverter.metres(parts[0]), MetresConverter.metres(parts[1]));
    }
}
