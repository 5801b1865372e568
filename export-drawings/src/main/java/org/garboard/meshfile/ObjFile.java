package org.garboard.meshfile;

import java.nio.charset.StandardCharsets;
import org.garboard.solid.Solid;
import org.garboard.units.FixedDecimal;

/**
 * A solid as OBJ text, its vertices shared, millimetres. Written here and not by a library, so that numbers are
 * printed as everywhere else: fixed decimals, the same on every locale.
 */
public final class ObjFile {
    /** Places behind the point [mm]: a tenth of a micrometre, below what single precision holds of a boat's length. */
    private static final int PLACES = 4;

    private ObjFile() {
    }

    /**
     * The whole file; the same solid gives the same bytes.
     *
     * @param part its name in the file, letters, digits and hyphens
     */
    public static byte[] of(String part, Solid solid) {
        StringBuilder out = new StringBuilder(64 * solid.triangles());
        out.append("# millimetres; hull frame: x aft, y to starboard, z up from base\no ").append(part).append('\n');
        for (int i = 0; i < solid.vertices(); i++) {
            out.append('v');
            number(out, solid.x(i));
            number(out, solid.y(i));
            number(out, solid.z(i));
            out.append('\n');
        }
        for (int t = 0; t < solid.triangles(); t++) {
            out.append('f');
            for (int k = 0; k < 3; k++) {
                out.append(' ').append(solid.corner(t, k) + 1);
            }
            out.append('\n');
        }
        return out.toString().getBytes(StandardCharsets.US_ASCII);
    }

    private static void number(StringBuilder out, double metres) {
        FixedDecimal.append(out.append(' '), 1000 * metres, PLACES);
    }
}
