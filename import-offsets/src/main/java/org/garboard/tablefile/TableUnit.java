package org.garboard.tablefile;

import java.util.Optional;
import java.util.regex.Pattern;
import org.garboard.slips.pen.Writing;
import org.garboard.units.LengthNotation;
import org.garboard.units.LengthUnit;

/** The unit that a heading gives for all numbers of the table. */
enum TableUnit {
    FEET_INCHES_EIGHTHS("(feet|ft)[-, ]+(inches|in)[-, ]+(and )?eighths", LengthNotation.unitRequired(), new Writing.FeetInchesEighths()),
    MILLIMETRE("mm|millimet(re|er)s?", LengthNotation.in(LengthUnit.MILLIMETRE), new Writing.Decimals(LengthUnit.MILLIMETRE)),
    CENTIMETRE("cm|centimet(re|er)s?", LengthNotation.in(LengthUnit.CENTIMETRE), new Writing.Decimals(LengthUnit.CENTIMETRE)),
    METRE("m|met(re|er)s?", LengthNotation.in(LengthUnit.METRE), new Writing.Decimals(LengthUnit.METRE)),
    FOOT("ft|feet|foot", LengthNotation.in(LengthUnit.FOOT), new Writing.Decimals(LengthUnit.FOOT)),
    INCH("in|inch(es)?", LengthNotation.in(LengthUnit.INCH), new Writing.Decimals(LengthUnit.INCH));

    static final String KNOWN = "mm, cm, m, ft, in or feet-inches-eighths";

    private final Pattern words;
    private final LengthNotation notation;
    private final Writing writing;

    TableUnit(String words, LengthNotation notation, Writing writing) {
        this.words = Pattern.compile(words, Pattern.CASE_INSENSITIVE);
        this.notation = notation;
        this.writing = writing;
    }

    LengthNotation notation() {
        return notation;
    }

    Writing writing() {
        return writing;
    }

    /** Behind a number in this unit: " mm"; nothing behind feet-inches-eighths. */
    String suffix() {
        return writing instanceof Writing.Decimals decimals ? " " + decimals.unit().symbol() : "";
    }

    static Optional<TableUnit> of(String text) {
        for (TableUnit unit : values()) {
            if (unit.words.matcher(text).matches()) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }
}
