package org.garboard.takeoff;

import java.util.OptionalDouble;

/**
 * The place of the boat from which distances along her are measured.
 *
 * @param name what it is, "lower corner of transom"
 * @param z up from the level [m]; where it is not told it is that of the nearest measured keel
 */
public record Datum(String name, OptionalDouble z) {
}
