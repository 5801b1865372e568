package org.garboard.cutout.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.garboard.craft.Transducer;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.flush.FlushCut;
import org.garboard.cutout.flush.FlushCutout;
import org.garboard.cutout.skin.HullSkin;
import org.garboard.cutout.skin.Skin;
import org.garboard.hull.Hull;
import org.garboard.siting.Boats;
import org.garboard.skin.Layup;
import org.garboard.solid.Solid;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

/** Meshes stray from the true skin by no more than the chord error that was asked for. */
class ChordErrorTest {
    private static final List<Hull> HULLS = List.of(Boats.cylinder(1.2), Boats.sphere(4), Boats.thirtyNineFeet());
    private static final Transducer BODY = new Transducer("test body", 0.20, 0.12, 0.028, 0.020, 0.020, Angle.ofDegrees(0));

    private static FlushCutout cut(Hull hull, double chord, double x, double y) throws CannotBeBuilt {
        ThroughHullWish wish = new ThroughHullWish(Optional.of(new Layup.Whole(0.012)), ThroughHullWish.GAP,
            ThroughHullWish.OVERLAP, ThroughHullWish.BLOCK, OptionalDouble.empty(), chord);
        return FlushCut.cut(hull, BODY, wish, x, y);
    }

    @Test
    void law_middlesOfTrianglesKeepToTheSkin() throws CannotBeBuilt {
        for (Hull hull : HULLS) {
            double x = hull.afterEnd() * 0.6;
            for (double chord : new double[] {1e-3, 3e-4, 1e-4, 2e-5}) {
                Solid solid = cut(hull, chord, x, 0.3).solids().stream().filter(part -> part.name().equals("hull-skin"))
                    .findFirst().orElseThrow().solid();
                double strays = strays(solid, new HullSkin(hull)) / chord;
                assertTrue(strays <= 1, "strays by " + strays + " of a chord error of " + chord);
                assertTrue(chord > 1e-4 || hull != HULLS.get(0) || strays > 0.3, "needlessly fine: " + strays);
            }
        }
    }

    /** Largest distance from the skin of middles of sides and of triangles, all of whose corners lie on it. */
    private static double strays(Solid solid, Skin skin) {
        double most = 0;
        int seen = 0;
        for (int t = 0; t < solid.triangles(); t++) {
            boolean outside = true;
            for (int k = 0; k < 3; k++) {
                int vertex = solid.corner(t, k);
                outside &= Math.abs(off(skin, solid.x(vertex), solid.y(vertex), solid.z(vertex))) < 1e-9;
            }
            if (outside) {
                seen++;
                for (double[] share : new double[][] {{0.5, 0.5, 0}, {0, 0.5, 0.5}, {0.5, 0, 0.5}, {1 / 3.0, 1 / 3.0, 1 / 3.0}}) {
                    double x = 0;
                    double y = 0;
                    double z = 0;
                    for (int k = 0; k < 3; k++) {
                        x += share[k] * solid.x(solid.corner(t, k));
                        y += share[k] * solid.y(solid.corner(t, k));
                        z += share[k] * solid.z(solid.corner(t, k));
                    }
                    most = Math.max(most, Math.abs(off(skin, x, y, z)));
                }
            }
        }
        assertTrue(seen > 20, "triangles on the outside: " + seen);
        return most;
    }

    /** Distance from the skin, square to it, to first order. */
    private static double off(Skin skin, double x, double y, double z) {
        double[] face = new double[Skin.SIZE];
        assertTrue(skin.at(x, y, face));
        return (z - face[0]) / Math.sqrt(1 + face[1] * face[1] + face[2] * face[2]);
    }

    /** What a refusal says would work, works: moved by so much the block clears the edge. */
    @Test
    void law_theRemedyOfARefusalWorks() throws CannotBeBuilt {
        for (double[] place : new double[][] {{3, 0.05}, {3, 0.02}, {3, 0.97}, {3, -0.05}, {3, -0.96}}) {
            for (Hull hull : List.of(Boats.prismaticV(0), Boats.prismaticV(20), Boats.warpedV(30, 10))) {
                String refusal = assertThrows(CannotBeBuilt.class, () -> cut(hull, 1e-4, place[0], place[1])).remedy();
                Matcher words = Pattern.compile("a site at least ([0-9]+) mm farther (outboard|inboard)").matcher(refusal);
                assertTrue(words.matches(), refusal);
                double by = Integer.parseInt(words.group(1)) / 1000.0 * (words.group(2).equals("outboard") ? 1 : -1);
                double y = place[1] + Math.signum(place[1]) * by;
                assertEquals(3, cut(hull, 1e-4, place[0], y).solids().size());
                assertThrows(CannotBeBuilt.class, () -> cut(hull, 1e-4, place[0], y - Math.signum(place[1]) * Math.signum(by) * 0.007));
            }
        }
    }
}
