package org.garboard.flow.streams;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.garboard.flow.panels.Images;
import org.garboard.flow.panels.PanelFlow;
import org.garboard.flow.panels.PanelMesh;
import org.garboard.flow.panels.PanelSolution;
import org.garboard.flow.panels.Stream;
import org.junit.jupiter.api.Test;

/** Streamlines of an ellipsoid along its long axis: |y|^(b^2) = const |z|^(c^2); of a spheroid, its meridians. */
class EllipsoidStreamsTest {

    /**
     * The tracer apart from panels: 4 : 1 : 0.5, from (-3.6, 0.087178, -0.213542). Independent computation, to the six places
     * it is given to.
     */
    @Test
    void exact_lineOnAnEllipsoid() {
        EllipsoidSkin skin = new EllipsoidSkin(4, 1, 0.5);
        double u = skin.u(-3.6);
        double v = skin.v(0.087178, -0.213542);
        double[][] expected = {{-3, 0.096989, -0.327144}, {-2, 0.103843, -0.429889}, {0, 0.107683, -0.497093}};
        List<double[]> places = new Tracer(skin).down(u, v).places();
        for (double[] at : expected) {
            double[] found = at(skin, places, at[0]);
            assertEquals(at[1], found[1], 2e-6, "y at " + at[0]);
            assertEquals(at[2], found[2], 2e-6, "z at " + at[0]);
        }
        double constant = Math.log(0.087178) - 0.25 * Math.log(0.213542);
        double[] place = new double[3];
        for (double[] uv : places) {
            skin.position(uv[0], uv[1], place);
            if (place[2] < -1e-3) {
                assertEquals(constant, Math.log(place[1]) - 0.25 * Math.log(-place[2]), 1e-5, "at x = " + place[0]);
            }
        }
    }

    /** Where the line comes to a station: a cubic in u from the directions at the places before and after. */
    private static double[] at(SurfaceMotion skin, List<double[]> places, double x) {
        double[] place = new double[3];
        double[] last = places.get(0);
        for (double[] uv : places) {
            skin.position(uv[0], uv[1], place);
            if (place[0] >= x) {
                return cubic(skin, last, uv, x);
            }
            last = uv;
        }
        throw new AssertionError("the line does not come to " + x);
    }

    private static double[] cubic(SurfaceMotion skin, double[] one, double[] other, double x) {
        double[] from = new double[2];
        double[] to = new double[2];
        skin.rate(one[0], one[1], from);
        skin.rate(other[0], other[1], to);
        double[] place = new double[3];
        double low = one[0];
        double high = other[0];
        for (int i = 0; i < 60; i++) {
            double u = 0.5 * (low + high);
            double h = other[0] - one[0];
            double s = (u - one[0]) / h;
            double v = one[1] * (1 + 2 * s) * (1 - s) * (1 - s) + other[1] * s * s * (3 - 2 * s)
                + h * (from[1] / from[0] * s * (1 - s) * (1 - s) - to[1] / to[0] * s * s * (1 - s));
            skin.position(u, v, place);
            if (place[0] < x) {
                low = u;
            } else {
                high = u;
            }
        }
        return place;
    }

    /** Panels on an ellipsoid whose rows are laid askew by a part of a row that changes along it. */
    private static GridSurface panels(double a, double b, double c, int columns, int rows, DoubleBinaryOperator askew) {
        double[] corners = new double[3 * (columns + 1) * (rows + 1)];
        for (int i = 0; i <= columns; i++) {
            for (int j = 0; j <= rows; j++) {
                double theta = Math.PI * i / columns;
                double part = (double) j / rows;
                double phi = 0.5 * Math.PI * (part + askew.applyAsDouble((double) i / columns, part));
                int at = 3 * (i * (rows + 1) + j);
                double ring = i == 0 || i == columns ? 0 : Math.sin(theta);
                corners[at] = -a * Math.cos(theta);
                corners[at + 1] = b * ring * Math.sin(phi);
                corners[at + 2] = -c * ring * Math.cos(phi);
            }
        }
        double[] panels = new double[PanelMesh.CORNERS * columns * rows];
        int to = 0;
        for (int i = 0; i < columns; i++) {
            for (int j = 0; j < rows; j++) {
                for (int[] corner : new int[][] {{i, j}, {i, j + 1}, {i + 1, j + 1}, {i + 1, j}}) {
                    System.arraycopy(corners, 3 * (corner[0] * (rows + 1) + corner[1]), panels, to, 3);
                    to += 3;
                }
            }
        }
        PanelFlow flow = assertInstanceOf(PanelFlow.class,
            PanelSolution.of(new PanelMesh(panels), Images.CENTRELINE_AND_WATER, Stream.AFT));
        double[] velocity = new double[3 * columns * rows];
        for (int i = 0; i < velocity.length; i++) {
            velocity[i] = flow.velocity(i / 3, i % 3);
        }
        return new GridSurface(columns, rows, corners, velocity);
    }

    /**
     * Rows of panels that do not follow the meridians; the lines must all the same, within 0.1 degrees, away from the tips:
     * where panels run to a point their error is greatest.
     */
    @Test
    void exact_lineOnASpheroidStaysInItsMeridian() {
        GridSurface skin = panels(4, 1, 1, 64, 24, (along, part) -> 0.3 * Math.sin(Math.PI * part) * (0.5 - along));
        Tracer tracer = new Tracer(skin);
        double[] place = new double[3];
        for (double row : new double[] {4, 8.3, 12, 17.6}) {
            skin.position(32, row, place);
            double meridian = Math.toDegrees(Math.atan2(place[1], -place[2]));
            for (List<double[]> way : List.of(tracer.down(32, row).places(), tracer.up(32, row).places())) {
                for (double[] uv : way) {
                    skin.position(uv[0], uv[1], place);
                    if (Math.abs(place[0]) < 3.6) {
                        assertEquals(meridian, Math.toDegrees(Math.atan2(place[1], -place[2])), 0.1, "at x = " + place[0]);
                    }
                }
            }
        }
    }

    /** With velocities of panels: the constant of a line amidships is met at the quarter lengths, y within 1 % of the half-breadth. */
    @Test
    void exact_lineOverPanelsOfAnEllipsoid() {
        GridSurface skin = panels(4, 1, 0.5, 64, 24, (along, part) -> 0);
        double[] place = new double[3];
        for (double row : new double[] {3, 6, 12, 18}) {
            skin.position(32, row, place);
            double constant = Math.log(place[1]) - 0.25 * Math.log(-place[2]);
            List<double[]> way = new Tracer(skin).up(32, row).places();
            int checked = 0;
            for (double[] uv : way) {
                skin.position(uv[0], uv[1], place);
                if (place[0] > -3.2) {
                    double y = Math.exp(constant + 0.25 * Math.log(-place[2]));
                    assertEquals(y, place[1], 0.01, "row " + row + " at x = " + place[0]);
                    checked++;
                }
            }
            assertTrue(checked > 10);
        }
    }
}
