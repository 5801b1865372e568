package org.garboard.drawing.sheets;

import java.util.List;
import java.util.Optional;
import org.garboard.cutout.Pocket;
import org.garboard.mount.Seat;

/**
 * Where the boat may not be held when she is lifted or set down: no sling, no block.
 *
 * @param site whose place is kept clear
 * @param fore its forward end [m aft of the table's origin]
 * @param aft its after end
 */
record LiftBand(MarkedSite site, double fore, double aft) {
    /** Slings and blocks keep so far from the body [m]: our choice, the breadth of a wide sling. */
    private static final double KEPT_CLEAR = 0.3;

    /** Of the first site that serves. */
    static Optional<LiftBand> of(SheetTask task, List<MarkedSite> sites) {
        return sites.stream().filter(MarkedSite::serves).findFirst().map(marked -> of(task, marked));
    }

    private static LiftBand of(SheetTask task, MarkedSite marked) {
        Optional<Pocket> pocket = task.record().pocket().filter(cut -> marked.siting().mount().seat() == Seat.ATHWART_KEEL);
        double body = task.made().fairing().map(block -> block.length()).orElse(task.job().transducer().length()) / 2;
        double half = pocket.map(cut -> cut.length() / 2 + Math.max(cut.foreRamp(), cut.aftRamp())).orElse(body);
        double reach = half + KEPT_CLEAR;
        double end = task.hull().lines().get(task.hull().lines().size() - 1).afterEnd();
        return new LiftBand(marked, Math.max(task.hull().forwardEnd(), marked.site().x() - reach), Math.min(end, marked.site().x() + reach));
    }
}
