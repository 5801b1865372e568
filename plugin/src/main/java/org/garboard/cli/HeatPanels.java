package org.garboard.cli;

import java.util.ArrayList;
import java.util.List;
import org.garboard.drawing.heat.HeatPanel;
import org.garboard.hull.Hull;
import org.garboard.job.SitingRecord;
import org.garboard.mount.water.RunningWater;
import org.garboard.siting.MountSiting;
import org.garboard.siting.Siting;
import org.garboard.siting.SitingTask;

/** What the picture of a job shows: a panel for each mount of each transducer, the others being where they are advised. */
final class HeatPanels {
    /** Side of the cells [m]: our choice, half a millimetre on paper at the scale of a 39 ft boat. */
    private static final double STEP = 0.020;
    /** [m] */
    private static final double ROUND = 0.005;

    /** Cells along a boat in a report: our choice, few, for all is asked at every node. */
    private static final int IN_REPORT = 100;

    private HeatPanels() {
    }

    static List<HeatPanel> of(Hull hull, RunningWater running, List<SitingRecord> all) {
        List<HeatPanel> panels = new ArrayList<>();
        for (SitingRecord decided : all) {
            for (MountSiting siting : decided.sitings()) {
                panels.add(panel(hull, running, decided, siting, STEP));
            }
        }
        return panels;
    }

    /** Of the advised mount, or where there is none of the first whose nearest place is told. */
    static List<HeatPanel> forReport(Hull hull, RunningWater running, SitingRecord decided) {
        double step = Math.ceil((hull.afterEnd() - hull.forwardEnd()) / IN_REPORT / ROUND) * ROUND;
        return decided.advised().or(() -> decided.sitings().stream().filter(siting -> siting.nearest().isPresent()).findFirst()).stream()
            .map(siting -> panel(hull, running, decided, siting, step)).toList();
    }

    private static HeatPanel panel(Hull hull, RunningWater running, SitingRecord decided, MountSiting siting, double step) {
        SitingTask task = decided.job().sitingTask(hull, decided.features(), running);
        return new HeatPanel(decided.job().transducer().name() + ": " + siting.mount().words() + (decided.isAdvised(siting) && !decided.isGiven() ? ", advised" : ""),
            Siting.map(hull, task, siting.mount(), step), siting.sites());
    }
}
