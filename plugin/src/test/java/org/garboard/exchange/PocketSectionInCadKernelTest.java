package org.garboard.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.craft.Transducer;
import org.garboard.cutout.KeelPocketCut;
import org.garboard.cutout.Pocket;
import org.garboard.cutout.PocketOutcome;
import org.garboard.cutout.PocketSection;
import org.garboard.meshfile.StlFile;
import org.garboard.mount.PocketWish;
import org.garboard.mount.pocket.PocketMake;
import org.garboard.solid.Solid;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pocket's solid, cut in a CAD kernel, shows the sections that are drawn. */
class PocketSectionInCadKernelTest {
    private static final double WITHIN_MM = 0.1;
    /** Coarser than a job's, for the kernel takes long over each facet. */
    private static final double CHORD = 3e-4;

    @TempDir
    private Path folder;

    @Test
    void law_theKernelsSectionIsTheDrawnOne() throws Exception {
        CadKernel kernel = CadKernel.in(folder);
        Pocket pocket = assertInstanceOf(PocketOutcome.Built.class, KeelPocketCut.cut(SampleHull.demo("outboard-39"),
            new Transducer("body", 0.3, 0.15, 0.042, 0.03, 0.02, Angle.ofDegrees(0)),
            new PocketWish(OptionalDouble.empty(), 0.003, 12, PocketMake.USUAL.within(CHORD)), 8.15)).pocket();
        Solid solid = pocket.solids().get(0).solid();
        List<String> answers = kernel.sections(StlFile.of(solid), pocket.sections().stream().map(section -> plane(pocket, section))
            .collect(Collectors.joining("\n")));
        assertEquals("True", answers.get(0).split(" ")[0]);
        assertEquals(solid.volume() * 1e9, Double.parseDouble(answers.get(0).split(" ")[1]), 1e-4 * solid.volume() * 1e9);
        for (int i = 0; i < pocket.sections().size(); i++) {
            double[] pieces = Arrays.stream(answers.get(i + 1).split(" ")).mapToDouble(Double::parseDouble).toArray();
            PocketSection section = pocket.sections().get(i);
            assertTrue(section.cut().size() > 10 && pieces.length > 60, section.name());
            for (Vector3D place : section.cut()) {
                assertTrue(off(place.multiply(1000), pieces) < WITHIN_MM, section.name() + " " + place + " " + off(place.multiply(1000), pieces));
            }
            // and the kernel finds nothing beside the drawn cut and the skin
            for (int k = 0; k < pieces.length; k += 3) {
                Vector3D found = Vector3D.of(pieces[k], pieces[k + 1], pieces[k + 2]);
                double near = Math.min(off(found, flat(section.cut())), off(found, flat(section.skin())));
                assertTrue(near < WITHIN_MM + 1000 * CHORD, section.name() + " " + found + " " + near);
            }
        }
    }

    /** A pocket a millimetre deeper does not pass for the drawn one: the comparison can fail. */
    @Test
    void aMillimetreOfDepthIsSeen() {
        double[] piece = {0, 0, 0, 10, 0, 0};
        assertEquals(1, off(Vector3D.of(5, 0, 1), piece), 1e-12);
    }

    /** n.p = d in millimetres: across the floor's frame, or the centreline; moved aside by less than a micrometre from facets' sides. */
    private static String plane(Pocket pocket, PocketSection section) {
        double cos = Math.cos(pocket.slope());
        double sin = Math.sin(pocket.slope());
        double d = 1000 * (pocket.site().getX() * cos + pocket.site().getZ() * sin + section.along()) + 1e-4;
        return section.name().equals("LONG") ? "0 1 0 0.0001" : String.format(Locale.ROOT, "%.12f 0 %.12f %.6f", cos, sin, d);
    }

    private static double[] flat(List<Vector3D> places) {
        double[] pieces = new double[6 * (places.size() - 1)];
        for (int i = 0; i + 1 < places.size(); i++) {
            for (int k = 0; k < 2; k++) {
                Vector3D place = places.get(i + k).multiply(1000);
                pieces[6 * i + 3 * k] = place.getX();
                pieces[6 * i + 3 * k + 1] = place.getY();
                pieces[6 * i + 3 * k + 2] = place.getZ();
            }
        }
        return pieces;
    }

    /** Distance of a place from the nearest piece [mm]. */
    private static double off(Vector3D place, double[] pieces) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i + 5 < pieces.length; i += 6) {
            Vector3D from = Vector3D.of(pieces[i], pieces[i + 1], pieces[i + 2]);
            Vector3D way = Vector3D.of(pieces[i + 3], pieces[i + 4], pieces[i + 5]).subtract(from);
            double square = way.dot(way);
            double share = square > 0 ? Math.max(0, Math.min(1, place.subtract(from).dot(way) / square)) : 0;
            least = Math.min(least, place.distance(from.add(way.multiply(share))));
        }
        return least;
    }
}
