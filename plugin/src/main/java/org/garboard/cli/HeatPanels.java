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

    private HeatPanels() {
    }

    static List<HeatPanel> of(Hull hull, RunningWater running, List<SitingRecord> all) {
        List<HeatPanel> panels = new ArrayList<>();
        for (SitingRecord decided : all) {
            SitingTask task = decided.job().sitingTask(hull, decided.features(), running);
            for (MountSiting siting : decided.sitings()) {
                panels.add(new HeatPanel(decided.job().transducer().name() + ": " + siting.mount().words() + (decided.isAdvised(siting) ? ", advised" : ""),
                    Siting.map(hull, task, siting.mount(), STEP), siting.sites()));
            }
        }
        return panels;
    }
}
