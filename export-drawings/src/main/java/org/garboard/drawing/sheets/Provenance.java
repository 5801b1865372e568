package org.garboard.drawing.sheets;

/**
 * What a drawing was made from, for its title block.
 *
 * @param version of the software
 * @param tableHash of the table of offsets' file, as the record prints it
 */
public record Provenance(String version, String tableHash) {
}
