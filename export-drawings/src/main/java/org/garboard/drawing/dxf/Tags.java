package org.garboard.drawing.dxf;

import java.util.Locale;
import org.garboard.units.FixedDecimal;

/** Text of a DXF under way: pairs of group code and value, a line each. */
final class Tags {

    /** A micrometre of a micrometre's thousandth shows in no reader; six places keep it. */
    private static final int PLACES = 6;

    private final StringBuilder text = new StringBuilder();

    Tags tag(int code, String value) {
        text.append(code).append('\n').append(value).append('\n');
        return this;
    }

    Tags tag(int code, int value) {
        text.append(code).append('\n').append(value).append('\n');
        return this;
    }

    Tags number(int code, double value) {
        text.append(code).append('\n');
        FixedDecimal.append(text, value, PLACES);
        int end = text.length();
        while (text.charAt(end - 1) == '0' && text.charAt(end - 2) != '.') {
            end--;
        }
        text.setLength(end);
        text.append('\n');
        return this;
    }

    /** A handle or a reference to one, in hexadecimal. */
    Tags handle(int code, int handle) {
        return tag(code, Integer.toHexString(handle).toUpperCase(Locale.ROOT));
    }

    /** A point in the plane, its z nought. */
    Tags point(int code, double x, double y) {
        return number(code, x).number(code + 10, y).number(code + 20, 0);
    }

    /** A point whose z is not written. */
    Tags flat(int code, double x, double y) {
        return number(code, x).number(code + 10, y);
    }

    Tags section(String name) {
        return tag(0, "SECTION").tag(2, name);
    }

    Tags endSection() {
        return tag(0, "ENDSEC");
    }

    Tags append(Tags other) {
        text.append(other.text);
        return this;
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
