package org.garboard.slips.boat;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.garboard.slips.fit.Apart;
import org.garboard.slips.fit.Fit;
import org.garboard.slips.fit.Foretelling;
import org.garboard.slips.fit.Reading;

/**
 * The whole boat fitted at once, some cells left out: lines and panels together, around the skin as it was,
 * until it stays.
 */
public final class Boat {
    private static final int ROUNDS = 3;

    private final Rows rows;
    private final double scatter;
    private final Skin skin;
    private final Sight sight;
    private final BoatFairness fairness;
    private boolean[] out;
    private Fit fit;

    /** @param scatter standard deviation of a reading [m] */
    public Boat(Rows rows, double scatter) {
        this.rows = rows;
        this.scatter = scatter;
        RowChoices choices = new RowChoices(rows, new boolean[rows.cells().size()], scatter);
        this.out = choices.suspects();
        this.fairness = new BoatFairness(choices.fairness(), rows.panels());
        FirstSkin first = new FirstSkin(rows, choices.fair(), fairness, out, scatter);
        for (int c = 0; c < out.length; c++) {
            out[c] |= first.isOdd(c);
        }
        this.skin = first.skin();
        this.sight = new Sight(rows, skin);
        refit();
        choosePanels();
        refit();
    }

    /** The fairness once more, now that other cells are out: by rows and panels, then together. */
    public void chooseAgain() {
        RowChoices choices = new RowChoices(rows, out, scatter);
        for (int column = 0; column < rows.namedColumns(); column++) {
            fairness.setRow(column, choices.fairness().get(column));
        }
        boolean[] before = out;
        out = choices.suspects();
        choosePanels();
        refit();
        Set<Integer> columns = new TreeSet<>();
        Set<Integer> panels = new TreeSet<>();
        for (int c = 0; c < out.length; c++) {
            Cell cell = rows.cells().get(c);
            if (out[c] && rows.isPoint(cell)) {
                panels.add(sight.panelOf(cell));
            } else if (out[c]) {
                columns.add(rows.columnOf(cell));
            }
        }
        panels.removeIf(p -> skin.across(p) == null);
        Reading[] readings = sight.readings(Sight.Look.BY_LEVEL);
        new JointChoice(skin, fairness, readings, scatter).choose(columns, panels);
        out = before;
        refit();
    }

    private void choosePanels() {
        Reading[] readings = sight.readings(Sight.Look.BY_LEVEL);
        for (int p = 0; p < rows.panels(); p++) {
            if (skin.across(p) != null) {
                fairness.setPanel(p, new PanelChoice(rows, skin, p, fairness, readings, out, scatter).best());
            }
        }
    }

    /** Fits anew with the cells that are in. */
    public void refit() {
        double[] penalty = fairness.penalty(skin);
        fit = new Fit(skin.net(), sight.readings(Sight.Look.BY_LEVEL), out, penalty, scatter);
        for (int round = 1; round < ROUNDS; round++) {
            skin.take(fit.solution());
            fit = new Fit(skin.net(), sight.readings(Sight.Look.BY_LEVEL), out, penalty, scatter);
        }
    }

    public boolean isOut(int cell) {
        return out[cell];
    }

    /** Without fitting anew: the skin stays where it was. */
    public void leaveOut(int cell) {
        out[cell] = true;
        fit.leaveOut(cell);
    }

    /** Without fitting anew: the skin stays where it was. */
    public void takeBack(int cell) {
        out[cell] = false;
        fit.takeBack(cell);
    }

    public boolean isSeen(int cell) {
        return fit.isSeen(cell);
    }

    /** Minus twice the logarithm of the likelihood of the cells that are in, each given the others. */
    public double costOfThoseIn() {
        return Foretelling.ofThoseIn(fit);
    }

    /** What the others say of a cell that is seen. */
    public Apart apart(int cell) {
        return fit.apart(cell);
    }

    /** What the others say of a cell that is out, at its own row's level. */
    public Apart foretold(int cell) {
        Cell which = rows.cells().get(cell);
        return (rows.isPoint(which) ? sight.atLevel(which) : Optional.<Reading>empty())
                .map(fit::apart).orElseGet(() -> fit.apart(cell));
    }
}
