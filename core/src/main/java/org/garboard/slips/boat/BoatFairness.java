package org.garboard.slips.boat;

import java.util.ArrayList;
import java.util.List;
import org.garboard.slips.fit.Pace;
import org.garboard.slips.fit.Unfairness;

/** How fair every named row and every panel is taken to be. Changeable. */
final class BoatFairness {
    /** Of a panel nothing is known of yet: third differences of some 30 mm. */
    private static final Unfairness.OfPanel ROUGH = new Unfairness.OfPanel(3, 3, new Pace(1, 0));

    private final List<Unfairness.OfRow> rows;
    private final List<Unfairness.OfPanel> panels = new ArrayList<>();

    BoatFairness(List<Unfairness.OfRow> rows, int panels) {
        this.rows = new ArrayList<>(rows);
        for (int p = 0; p < panels; p++) {
            this.panels.add(ROUGH);
        }
    }

    /** By column. */
    List<Unfairness.OfRow> rows() {
        return rows;
    }

    Unfairness.OfPanel panel(int panel) {
        return panels.get(panel);
    }

    void setRow(int column, Unfairness.OfRow fairness) {
        rows.set(column, fairness);
    }

    void setPanel(int panel, Unfairness.OfPanel fairness) {
        panels.set(panel, fairness);
    }

    /** All of it as a band over the skin's net. */
    double[] penalty(Skin skin) {
        double[] band = skin.net().emptyBand();
        for (int column = 0; column < rows.size(); column++) {
            Unfairness.addRow(skin.net(), band, column, rows.get(column));
        }
        for (int p = 0; p < panels.size(); p++) {
            if (skin.across(p) != null) {
                Unfairness.addPanel(skin.net(), band, skin.firstColumn(p), skin.across(p), panels.get(p));
            }
        }
        return band;
    }
}
