package org.garboard.drawing;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Holds a dimension's words against what it measures. */
final class DimensionWords {

    private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.(\\d+))?");

    private DimensionWords() {
    }

    /** Refuses words whose number is not the measured size, to half of its last place. */
    static void requireTrue(Dimension dimension, Scale scale) {
        Matcher number = NUMBER.matcher(dimension.words());
        double size = dimension.trueSize(scale);
        if (!number.find() || Math.abs(Double.parseDouble(number.group()) - size) > halfPlace(number) + 1e-6) {
            throw new IllegalArgumentException("dimension says \"" + dimension.words() + "\" but measures " + size);
        }
    }

    private static double halfPlace(Matcher number) {
        int places = number.group(1) == null ? 0 : number.group(1).length();
        return 0.5 * Math.pow(10, -places);
    }
}
