package org.garboard.mount.water;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.garboard.flow.layer.Layer;
import org.garboard.flow.layer.LayerLaw;
import org.garboard.flow.water.Water;

/** A figure of the layer, tabled by the length of its run: what a search reads off at every place. Owns its array. */
final class LayerAlong {
    /** Length of run between two entries [m]. */
    static final double STEP = 0.1;

    private final double[] figures;

    private LayerAlong(double[] figures) {
        this.figures = figures;
    }

    /**
     * The layers after 0.1 m, 0.2 m and so on, at least two; none where the law does not reach.
     *
     * @param speed of the water outside [m/s]
     * @param longest run that will be asked for [m]
     */
    static List<LayerLaw.Answer> layers(double speed, Water water, double longest) {
        int count = 2 + (int) Math.ceil(longest / STEP);
        List<LayerLaw.Answer> layers = new ArrayList<>(count);
        for (int k = 1; k < count; k++) {
            layers.add(LayerLaw.USUAL.after(k * STEP, speed, water));
        }
        return layers;
    }

    static LayerAlong of(List<LayerLaw.Answer> layers, ToDoubleFunction<Layer> figure) {
        double[] figures = new double[layers.size() + 1];
        figures[0] = Double.NaN;
        for (int k = 1; k < figures.length; k++) {
            figures[k] = layers.get(k - 1) instanceof LayerLaw.Known known ? figure.applyAsDouble(known.layer()) : Double.NaN;
        }
        return new LayerAlong(figures);
    }

    /** After a run [m], more than 0. The first piece is below the law's range: its end stands for it. NaN where no law reaches. */
    double after(double run) {
        double place = run / STEP;
        int k = Math.min(figures.length - 2, (int) place);
        double from = k == 0 ? figures[1] : figures[k];
        return from + Math.min(1, place - k) * (figures[k + 1] - from);
    }
}
