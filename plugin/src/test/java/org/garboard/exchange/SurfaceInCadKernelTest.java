package org.garboard.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.garboard.geometry.KnotVector;
import org.garboard.hull.Hull;
import org.garboard.hull.Panel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A surface file rebuilt in a CAD kernel is the same surface, to rounding. */
class SurfaceInCadKernelTest {
    private static final int PLACES = 10_000;
    private static final double POINT = 1e-9;
    private static final double NORMAL = 1e-9;
    private static final double CURVATURE_RELATIVE = 1e-6;
    private static final double CURVATURE = 1e-9;

    @TempDir
    private Path folder;

    /**
     * What two evaluations of the same places differ by at most.
     *
     * @param point distance [m]
     * @param normal length of the difference of the unit normals
     * @param curvature as a part of what is allowed
     */
    private record Difference(double point, double normal, double curvature) {
        boolean isRounding() {
            return point <= POINT && normal <= NORMAL && curvature <= 1;
        }
    }

    /** A place by panel and surface parameters. */
    private record Place(int panel, double x, double v) {
    }

    @ParameterizedTest
    @CsvSource({"outboard-22,through points", "outboard-39,through points", "outboard-22,faired", "outboard-39,faired",
        "stepped-38,faired"})
    void law_theKernelFindsTheSamePointsNormalsAndCurvatures(String boat, String fit) throws Exception {
        CadKernel kernel = CadKernel.in(folder);
        Hull hull = fit.equals("faired") ? SampleHull.fairedDemo(boat) : SampleHull.demo(boat);
        List<Place> places = places(hull);
        List<String> answers = kernel.answers(file(hull), lines(places));
        for (int p = 0; p < hull.panels().size(); p++) {
            assertEquals(p + " True True True True", answers.get(p), "poles, knots, degrees and face of panel " + p);
        }
        Difference difference = difference(hull, places, answers.subList(hull.panels().size(), answers.size()));
        assertTrue(difference.isRounding(), difference.toString());
    }

    /** Ten nanometres in one pole are seen: the comparison can fail. */
    @Test
    void aPoleMovedByTenNanometresIsSeen() throws Exception {
        CadKernel kernel = CadKernel.in(folder);
        Hull hull = SampleHull.demo("outboard-39");
        List<Place> places = places(hull);
        double pole = hull.panels().get(0).poleZ(6, 4);
        String text = new String(file(hull), StandardCharsets.UTF_8);
        String moved = text.replace("," + ExactDecimal.of(pole).toPlainString() + " ", "," + ExactDecimal.of(pole + 1e-8).toPlainString() + " ");
        assertTrue(!moved.equals(text));
        List<String> answers = kernel.answers(moved.getBytes(StandardCharsets.UTF_8), lines(places));
        Difference difference = difference(hull, places, answers.subList(hull.panels().size(), answers.size()));
        assertTrue(difference.point() > 2 * POINT && difference.point() < 1e-8, difference.toString());
        assertTrue(difference.normal() > 2 * NORMAL, difference.toString());
    }

    /** The ends and corners of every panel, the rest at random. */
    private static List<Place> places(Hull hull) {
        Random random = new Random(4);
        List<Place> places = new ArrayList<>();
        for (int p = 0; p < hull.panels().size(); p++) {
            for (double v : new double[] {0, 0.5, 1}) {
                places.add(new Place(p, along(hull, p, 0), v));
                places.add(new Place(p, along(hull, p, 1), v));
            }
        }
        while (places.size() < PLACES) {
            int p = places.size() % hull.panels().size();
            places.add(new Place(p, along(hull, p, random.nextDouble()), random.nextDouble()));
        }
        return places;
    }

    /** x at a share of a panel's length, which where a face cuts it is longer than its skin. */
    private static double along(Hull hull, int panel, double share) {
        KnotVector along = hull.panels().get(panel).knotsAlong();
        return share == 1 ? along.end() : along.start() + share * (along.end() - along.start());
    }

    private static byte[] file(Hull hull) {
        return SurfaceFile.write(hull, "1.2.3", FileHash.of("offsets.csv", new byte[0]));
    }

    private static String lines(List<Place> places) {
        StringBuilder lines = new StringBuilder();
        places.forEach(place -> lines.append(place.panel()).append(' ').append(place.x()).append(' ').append(place.v()).append('\n'));
        return lines.toString();
    }

    private static Difference difference(Hull hull, List<Place> places, List<String> answers) {
        assertEquals(places.size(), answers.size());
        double point = 0;
        double normal = 0;
        double curvature = 0;
        double[] core = new double[Panel.POINT_SIZE];
        for (int i = 0; i < places.size(); i++) {
            Place place = places.get(i);
            hull.panels().get(place.panel()).evaluate(place.x(), place.v(), core, 0);
            double[] kernel = Arrays.stream(answers.get(i).split(" ")).mapToDouble(Double::parseDouble).toArray();
            point = worse(point, distance(core, kernel, Panel.X));
            normal = worse(normal, distance(core, kernel, Panel.NX));
            for (int k = Panel.K1; k <= Panel.K2; k++) {
                double allowed = Math.max(CURVATURE, CURVATURE_RELATIVE * Math.abs(core[k]));
                curvature = worse(curvature, Math.abs(kernel[k] - core[k]) / allowed);
            }
        }
        return new Difference(point, normal, curvature);
    }

    /** Not a number is worse than any. */
    private static double worse(double before, double now) {
        return now <= before ? before : now;
    }

    private static double distance(double[] a, double[] b, int from) {
        return Math.hypot(Math.hypot(a[from] - b[from], a[from + 1] - b[from + 1]), a[from + 2] - b[from + 2]);
    }
}
