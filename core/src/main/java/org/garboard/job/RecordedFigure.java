package org.garboard.job;

/**
 * One value of a record.
 *
 * @param subject what it is told of, "craft, speed cruise"
 * @param name with its unit behind a low line, "speed_kn"; "text" for words
 * @param value as it stands there
 */
public record RecordedFigure(String subject, String name, String value) {
}
