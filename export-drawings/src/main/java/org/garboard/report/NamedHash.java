package org.garboard.report;

/**
 * A file that the report tells of.
 *
 * @param what it is: "job"
 * @param name without folders
 * @param sha256 of its bytes, in small hexadecimal digits
 */
public record NamedHash(String what, String name, String sha256) {
}
