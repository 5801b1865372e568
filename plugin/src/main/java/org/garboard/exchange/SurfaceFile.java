package org.garboard.exchange;

import org.garboard.hull.Hull;

/** Writes the hull surface for CAD kernels, as {@code garboard-surface.xsd} describes it. */
public final class SurfaceFile {
    static final String NAMESPACE = "urn:garboard:surface";
    static final String VERSION = "1";

    /** By this a file is known; a record, which holds the same element, does not have it. */
    public static final String BEGINNING = "<surface xmlns=\"" + NAMESPACE + "\"";

    private SurfaceFile() {
    }

    /**
     * The surface as a file. The same surface gives the same bytes.
     *
     * @param hull the surface
     * @param programVersion version of the program
     * @param table the table that it was drawn from, named without folders
     */
    public static byte[] write(Hull hull, String programVersion, FileHash table) {
        return XmlWriting.bytes(SurfaceMapping.toBean(hull, programVersion, table), NAMESPACE);
    }
}
