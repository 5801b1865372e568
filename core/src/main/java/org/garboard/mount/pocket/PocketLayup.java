package org.garboard.mount.pocket;

import java.util.List;

/**
 * What the pocket is laminated of, from the water inward. Lengths [m].
 *
 * @param gelcoat its thickness, 0 for none
 * @param layers of laminate behind it
 * @param scarf length of the taper to the thickness that it joins, 12 for 1:12
 * @param trayGap between a tray and the hull that it is let into, all round
 */
public record PocketLayup(double gelcoat, List<Layer> layers, double scarf, double trayGap) {
    /** Common in repair of glass laminates, quoted second-hand. */
    public static final double SCARF = 12;
    /** Our choice: room for paste. */
    public static final double TRAY_GAP = 0.003;
    /** None told. */
    public static final PocketLayup UNTOLD = new PocketLayup(0, List.of(), SCARF, TRAY_GAP);

    public PocketLayup {
        layers = List.copyOf(layers);
    }

    /** One layer. */
    public record Layer(String name, double thickness) {
    }

    /** All of it [m]; 0 where it is not told. */
    public double thickness() {
        return gelcoat + layers.stream().mapToDouble(Layer::thickness).sum();
    }
}
