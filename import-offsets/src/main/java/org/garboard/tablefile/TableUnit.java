package org.garboard.tablefile;

import java.util.Optional;
import java.util.regex.Pattern;
import org.garboard.units.LengthNotation;
import org.garboard.units.LengthUnit;

/** The unit that a heading gives for all numbers of the table. */
enum TableUnit {
    FEET_INCHES_EIGHTHS("(feet|ft)[-, ]+(inches|in)[-, ]+(and )?eighths", LengthNotation.unitRequired()),
    MILLIMETRE("mm|millimet(re|er)s?", LengthNotation.in(LengthUnit.MILLIMETRE)),
    CENTIMETRE("cm|centimet(re|er)s?", LengthNotation.in(LengthUnit.CENTIMETRE)),
    METRE("m|met(re|er)s?", LengthNotation.in(LengthUnit.METRE)),
    FOOT("ft|feet|foot", LengthNotation.in(LengthUnit.FOOT)),
    INCH("in|inch(es)?", LengthNotation.in(LengthUnit.INCH));

    static final String KNOWN = "mm, cm, m, ft, in or feet-inches-eighths";

    private final Pattern words;
    private final LengthNotation notation;

    TableUnit(String words, LengthNotation notation) {
        this.words = Pattern.compile(words, Pattern.CASE_INSENSITIVE);
        this.notation = notation;
    }

    LengthNotation notation() {
        return notation;
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
