package org.garboard.flow.panels;

import java.util.Locale;

/** A flow about panels, or why there is none. */
public sealed interface PanelSolution permits PanelFlow, PanelSolution.NotSolved {

    /** Water that the equations may leave going through the skin, as a part of the stream's: our choice. */
    double WITHIN = 1e-10;
    /** Steps of the solver; bodies tried take 8 to 60. */
    int MOST_STEPS = 400;

    /** The equations of the panels are too near to having no answer: panels that all but touch back to back, say. */
    record NotSolved(String reason) implements PanelSolution {
    }

    /**
     * The flow of a stream past a body.
     *
     * @param images a stream with images must run along x, as it would cross the mirrors otherwise
     */
    static PanelSolution of(PanelMesh mesh, Images images, Stream stream) {
        if (images != Images.NONE && (stream.y() != 0 || stream.z() != 0)) {
            throw new IllegalArgumentException("a stream across its mirrors: " + stream);
        }
        Influence influence = new Influence(mesh, images);
        double[] right = new double[mesh.size()];
        for (int panel = 0; panel < right.length; panel++) {
            right[panel] = -(stream.x() * mesh.normal(panel, 0) + stream.y() * mesh.normal(panel, 1) + stream.z() * mesh.normal(panel, 2));
        }
        Gmres equations = new Gmres(influence::times, WITHIN, MOST_STEPS);
        double[] strength = equations.solve(right);
        if (!(equations.left() <= WITHIN)) {
            return new NotSolved(String.format(Locale.ROOT, "the flow past %d panels is not found: after %d steps %.1e of the stream "
                + "still goes through the skin; %.0e is asked", mesh.size(), equations.steps(), equations.left(), WITHIN));
        }
        return new PanelFlow(mesh, images, stream, strength);
    }
}
