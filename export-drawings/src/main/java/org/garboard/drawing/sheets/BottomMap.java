package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.cutout.made.PartsMade;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Scale;
import org.garboard.drawing.View;
import org.garboard.drawing.layout.Cluster;
import org.garboard.drawing.layout.Lettering;
import org.garboard.hull.Hull;
import org.garboard.job.SitingRecord;
import org.garboard.offsets.HullOffsets;

/** The bottom with regions and sites as a picture by itself, so narrow that a hand-held screen shows its letters. */
public final class BottomMap {
    /** Of the hull [mm]; our choice: with letters of 2.5 mm it is read on a screen that is 60 mm wide. */
    private static final double LENGTH = 95;

    private BottomMap() {
    }

    /** Seen from below, bow to the right, with the legend of its hatches below it. */
    public static View of(SitingRecord record, HullOffsets table, Hull hull, Provenance provenance) {
        Lettering lettering = new Lettering(2.5, 2.5, 2.5);
        SheetTask task = new SheetTask(record, PartsMade.NONE, SitingWater.NONE, table, hull, provenance, SheetSubject.paper(record.job().drawing()),
                lettering, Optional.empty());
        Scale scale = new Scale((int) Math.ceil((hull.afterEnd() - hull.forwardEnd()) * 1000 / LENGTH));
        View plan = BottomPlanView.narrow(task, scale, MarkedSite.of(record));
        Cluster legend = RegionHatch.legend(record, lettering);
        List<Entity> shown = new ArrayList<>(plan.entities());
        legend.loose().forEach(entity -> shown.add(entity.movedBy(plan.frame().left() - legend.bounds().left(),
                plan.frame().bottom() - 2 * lettering.gap() - legend.bounds().top())));
        return View.around(plan.name(), shown);
    }
}
