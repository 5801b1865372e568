package org.garboard.meshfile;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.io.euclidean.threed.stl.BinaryStlWriter;
import org.garboard.solid.Solid;

/**
 * A solid as binary STL: little-endian, single precision, millimetres. The format has no units and no axes; the
 * file's name says mm, its header which way the axes run.
 */
public final class StlFile {
    private static final int HEADER = 80;
    /** Does not begin with "solid", by which readers tell the text form. */
    private static final String AXES = "mm; hull frame: x aft, y to starboard, z up from base";

    private StlFile() {
    }

    /** The whole file; the same solid gives the same bytes. */
    public static byte[] of(Solid solid) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(HEADER + 4 + 50 * solid.triangles());
        try (BinaryStlWriter writer = new BinaryStlWriter(out)) {
            writer.writeHeader(Arrays.copyOf(AXES.getBytes(StandardCharsets.US_ASCII), HEADER), solid.triangles());
            for (int t = 0; t < solid.triangles(); t++) {
                writer.writeTriangle(corner(solid, t, 0), corner(solid, t, 1), corner(solid, t, 2), null);
            }
        }
        return out.toByteArray();
    }

    private static Vector3D corner(Solid solid, int triangle, int corner) {
        int vertex = solid.corner(triangle, corner);
        return Vector3D.of(1000 * solid.x(vertex), 1000 * solid.y(vertex), 1000 * solid.z(vertex));
    }
}
