package org.garboard.offsets;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.garboard.units.FixedDecimal;
import org.garboard.units.LengthUnit;

/** How thick the skin is, square to it. */
public sealed interface SkinThickness {

    /** On a panel [m]. */
    double on(PanelName panel);

    /** "32 mm thick". */
    String words();

    /** The same all over, 0 or more [m]. */
    record Everywhere(double metres) implements SkinThickness {
        public Everywhere {
            check(metres);
        }

        @Override
        public double on(PanelName panel) {
            return metres;
        }

        @Override
        public String words() {
            return millimetres(metres) + " thick";
        }
    }

    /** Panel by panel. */
    record ByPanel(List<OfPanel> panels) implements SkinThickness {
        public ByPanel {
            panels = List.copyOf(panels);
        }

        @Override
        public double on(PanelName panel) {
            for (OfPanel each : panels) {
                if (each.panel().equals(panel)) {
                    return each.metres();
                }
            }
            throw new IllegalArgumentException("no thickness for the panel " + panel.words());
        }

        @Override
        public String words() {
            return panels.stream().map(each -> millimetres(each.metres()) + " thick from " + each.panel().words())
                .collect(Collectors.joining(", "));
        }
    }

    /** Of one panel, 0 or more [m]. */
    record OfPanel(PanelName panel, double metres) {
        public OfPanel {
            check(metres);
        }
    }

    private static void check(double metres) {
        if (!(metres >= 0 && metres < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(String.format(Locale.ROOT, "a skin is %f m thick", metres));
        }
    }

    private static String millimetres(double metres) {
        return FixedDecimal.format(metres / LengthUnit.MILLIMETRE.metres(), 3).replaceAll("\\.?0+$", "") + " mm";
    }
}
