package org.garboard.decision;

import java.util.List;
import java.util.Optional;
import org.garboard.craft.Fitting;
import org.garboard.craft.LaidFeature;
import org.garboard.craft.Sides;
import org.garboard.cutout.Pocket;
import org.garboard.geometry.Quad;
import org.garboard.job.SitingRecord;
import org.garboard.mount.Footprint;
import org.garboard.mount.Installation;
import org.garboard.mount.KeelPocket;
import org.garboard.mount.Mount;
import org.garboard.mount.Seat;
import org.garboard.mount.Stands;
import org.garboard.siting.Site;

/** A transducer where it is advised, as a feature of the bottom that another keeps clear of. */
final class Placed {

    private Placed() {
    }

    /** What it covers in plan: the footprint, as if it lay level, which is a little more than it covers; a pocket with its ramps. */
    static Optional<LaidFeature> of(SitingRecord decided) {
        return decided.advised().map(siting -> siting.sites().get(0)).map(site -> of(decided, site));
    }

    private static LaidFeature of(SitingRecord decided, Site site) {
        Installation installation = decided.job().installation();
        Footprint footprint = site.mount().footprint(installation);
        double ahead = footprint.length() / 2;
        double abaft = footprint.length() / 2;
        if (site.mount() instanceof KeelPocket) {
            ahead += decided.pocket().map(Pocket::foreRamp).orElse(0.0);
            abaft += decided.pocket().map(Pocket::aftRamp).orElse(0.0);
        } else if (site.mount().seat() == Seat.BEHIND_TRANSOM) {
            // its footprint is the water that it asks for, ahead of it
            ahead = 0;
            abaft = installation.transducer().length();
        }
        double y = Math.abs(site.y());
        double half = footprint.width() / 2;
        Quad cover = Quad.of(site.x() - ahead, y - half, site.x() + abaft, y - half, site.x() + abaft, y + half, site.x() - ahead, y + half);
        return new LaidFeature(decided.job().transducer().name(), kind(site.mount()).words(), side(site), List.of(cover), height(site.mount()));
    }

    private static Fitting.Type kind(Mount mount) {
        return mount.stands() == Stands.INSIDE ? Fitting.Type.IN_HULL_TRANSDUCER : Fitting.Type.TRANSDUCER;
    }

    /** Nothing of what lies flush stands out; what hangs below is taken to stand out who knows how far. */
    private static Optional<Double> height(Mount mount) {
        return mount.stands() == Stands.OUT ? Optional.empty() : Optional.of(0.0);
    }

    private static Sides side(Site site) {
        return site.y() == 0 ? Sides.BOTH : site.y() > 0 ? Sides.STARBOARD : Sides.PORT;
    }
}
