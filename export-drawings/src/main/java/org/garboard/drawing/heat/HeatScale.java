package org.garboard.drawing.heat;

import java.util.List;
import org.garboard.units.FixedDecimal;

/**
 * Utilisation in ten classes of a fifth each; what is worse than the last belongs to it. The less, the lighter.
 *
 * <p>The colours are ten even steps of "viridis" (van der Walt and Smith 2015, dedicated to the public domain, CC0), which grows
 * lighter evenly: it reads the same in grey, and to eyes that tell red and green badly.
 */
final class HeatScale {
    /** Width of a class. */
    static final double STEP = 0.2;
    private static final List<String> COLOURS = List.of("#fde725", "#b5de2b", "#6ccd5a", "#35b779", "#1f9e89", "#26828e", "#31688e",
        "#3e4a89", "#482878", "#440154");

    private HeatScale() {
    }

    static int classes() {
        return COLOURS.size();
    }

    /** @param utilisation infinite too, not NaN */
    static int classOf(double utilisation) {
        return (int) Math.max(0, Math.min(classes() - 1, Math.ceil(utilisation / STEP - 1e-9) - 1));
    }

    /** Upper end of a class. */
    static double most(int number) {
        return (number + 1) * STEP;
    }

    static String colour(int number) {
        return COLOURS.get(number);
    }

    /** "to 0.4", "above 1.8". */
    static String words(int number) {
        return number == classes() - 1 ? "above " + FixedDecimal.format(number * STEP, 1) : "to " + FixedDecimal.format(most(number), 1);
    }
}
