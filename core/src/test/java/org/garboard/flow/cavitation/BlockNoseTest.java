package org.garboard.flow.cavitation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.garboard.flow.cavitation.Suction.FairingNose;
import org.garboard.flow.panels.Images;
import org.garboard.flow.panels.PanelFlow;
import org.garboard.flow.panels.PanelMesh;
import org.garboard.flow.panels.PanelSolution;
import org.garboard.flow.panels.Stream;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a fairing block sucks, by panels laid over its true form and its image in the skin (the method that is held to Lamb's
 * ellipsoids in the tests of panels), against the half ellipsoid that it is taken for.
 */
class BlockNoseTest {
    private static final int STATIONS = 40;
    private static final int FACE = 10;
    private static final int EDGE = 6;
    private static final int SIDE = 10;
    /** Edges along the flow, taken off by so much [m]. */
    private static final double ROUND = 0.005;
    /** The blunt after end and what it does to the last of the block is left out: water leaves it there. */
    private static final double BEFORE_THE_TAIL = 0.75;

    /** Thickness form of the NACA four-digit sections, its after end closed. */
    private static double halfBreadth(double x) {
        return 5 * (0.2969 * Math.sqrt(x) - 0.1260 * x - 0.3516 * x * x + 0.2843 * x * x * x - 0.1036 * x * x * x * x);
    }

    private static double[][] section(double x, double length, double width, double height, double run) {
        double half = x <= 0 || x >= length ? 0 : width * halfBreadth(x / length);
        double ahead = Math.max(0, 1 - x / run);
        double down = height * Math.sqrt(1 - ahead * ahead);
        double round = Math.min(ROUND, 0.9 * Math.min(half, down));
        List<double[]> points = new ArrayList<>();
        for (int j = 0; j <= FACE; j++) {
            points.add(new double[] {x, (half - round) * Math.sin(Math.PI / 2 * j / FACE), -down});
        }
        for (int j = 1; j <= EDGE; j++) {
            double turn = Math.PI / 2 * j / EDGE;
            points.add(new double[] {x, half - round + round * Math.sin(turn), round - down - round * Math.cos(turn)});
        }
        for (int j = 1; j <= SIDE; j++) {
            points.add(new double[] {x, half, (round - down) * Math.cos(Math.PI / 2 * j / SIDE)});
        }
        return points.toArray(double[][]::new);
    }

    /** A quarter: starboard, below the skin. */
    private static PanelMesh mesh(double length, double width, double height, double run) {
        List<double[]> panels = new ArrayList<>();
        for (int i = 0; i < STATIONS; i++) {
            double[][] fore = section(length * (1 - Math.cos(Math.PI * i / STATIONS)) / 2, length, width, height, run);
            double[][] aft = section(length * (1 - Math.cos(Math.PI * (i + 1) / STATIONS)) / 2, length, width, height, run);
            for (int j = 0; j + 1 < fore.length; j++) {
                double[][] corners = {fore[j], fore[j + 1], aft[j + 1], aft[j]};
                double[] panel = new double[PanelMesh.CORNERS];
                for (int k = 0; k < corners.length; k++) {
                    System.arraycopy(corners[k], 0, panel, 3 * k, 3);
                }
                if (size(panel) > 1e-13) {
                    panels.add(panel);
                }
            }
        }
        double[] all = new double[PanelMesh.CORNERS * panels.size()];
        for (int i = 0; i < panels.size(); i++) {
            System.arraycopy(panels.get(i), 0, all, PanelMesh.CORNERS * i, PanelMesh.CORNERS);
        }
        return new PanelMesh(all);
    }

    private static double size(double[] p) {
        double[] one = {p[6] - p[0], p[7] - p[1], p[8] - p[2]};
        double[] other = {p[9] - p[3], p[10] - p[4], p[11] - p[5]};
        return Math.hypot(Math.hypot(one[1] * other[2] - one[2] * other[1], one[2] * other[0] - one[0] * other[2]), one[0] * other[1] - one[1] * other[0]);
    }

    private static double byPanels(double length, double width, double height, double run) {
        PanelFlow flow = assertInstanceOf(PanelFlow.class, PanelSolution.of(mesh(length, width, height, run), Images.CENTRELINE_AND_WATER, Stream.AFT));
        double least = 1;
        for (int panel = 0; panel < flow.mesh().size(); panel++) {
            least = flow.mesh().centre(panel, 0) < BEFORE_THE_TAIL * length ? Math.min(least, flow.pressure(panel)) : least;
        }
        return least;
    }

    /**
     * Blocks as they are cut, high and low, of usual slenderness and slimmer, with noses of a third and of nearly all the room ahead
     * of the widest place: the ellipsoid of the nose holds the panels and is no more than two thirds above them. What the whole
     * block's ellipsoid says, and the edge without end, would each be wrong by a factor.
     */
    @ParameterizedTest
    @CsvSource({"0.532, 0.152, 0.0643, 0.084", "0.532, 0.152, 0.0643, 0.136", "0.9, 0.2, 0.05, 0.12", "0.6, 0.12, 0.09, 0.11"})
    void law_theNosesEllipsoidHoldsThePanels(double length, double width, double height, double run) {
        double panels = byPanels(length, width, height, run);
        double ellipsoid = FairingNose.ofBlock(run, width, height).least();
        assertTrue(ellipsoid < panels && ellipsoid > 1.67 * panels, "ellipsoid " + ellipsoid + ", panels " + panels);
        double whole = new FairingNose(length, width, height, Angle.ofDegrees(0)).least();
        double edge = 1 - Math.pow(1 + height / run, 2);
        assertTrue(whole > 0.75 * panels && edge < 1.5 * panels, "whole form " + whole + ", edge " + edge + ", panels " + panels);
    }

    /** A nose as long, as wide and as high as half a ball: -5/4 (Lamb), whatever the yaw. */
    @Test
    void exact_aBall() {
        assertEquals(-1.25, FairingNose.ofBlock(0.1, 0.2, 0.1).least(), 1e-9);
    }
}
