package org.garboard.decision;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.garboard.craft.BottomFeatures;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.KeelPocketCut;
import org.garboard.cutout.Pocket;
import org.garboard.cutout.PocketOutcome;
import org.garboard.hull.Hull;
import org.garboard.job.Chooser;
import org.garboard.job.Job;
import org.garboard.job.SitingRecord;
import org.garboard.mount.Check;
import org.garboard.mount.KeelPocket;
import org.garboard.mount.Mount;
import org.garboard.mount.water.RunningWater;
import org.garboard.siting.MountSiting;
import org.garboard.siting.PlanPoint;
import org.garboard.siting.Site;
import org.garboard.siting.Siting;
import org.garboard.siting.SitingTask;
import org.garboard.units.FixedDecimal;

/**
 * A place that the yard gives instead of the advised one. It is taken as it is, with its checks, met or not.
 *
 * @param mount how the transducer goes in there, whether or not the job lists it
 * @param at its centre in plan [m]
 */
public record GivenPlace(Mount mount, PlanPoint at) {

    /**
     * What is to be drawn there, and beside it what the search finds for each mount of the job.
     *
     * @param job of the one transducer
     * @param features what else is on the bottom
     * @throws CannotBeBuilt where it finds no seat, or no pocket can be cut there
     */
    public SitingRecord decided(Hull hull, RunningWater running, Job job, BottomFeatures features) throws CannotBeBuilt {
        SitingTask task = job.sitingTask(hull, features, running);
        Site site = Siting.at(hull, task, mount, at.x(), at.y());
        if (Double.isNaN(site.z()) || Double.isNaN(site.deadrise())) {
            Check seat = site.checks().get(0);
            throw new CannotBeBuilt("at x = " + FixedDecimal.format(at.x(), 3) + " m, y = " + FixedDecimal.format(at.y(), 3)
                + " m " + seat.name() + ": " + seat.sentence(), "a place where the whole footprint finds a seat");
        }
        Optional<Pocket> pocket = mount instanceof KeelPocket ? Optional.of(pocket(hull, job)) : Optional.empty();
        List<MountSiting> found = Siting.search(hull, task);
        MountSiting given = found.stream().filter(siting -> siting.mount().equals(mount)).findFirst()
            .orElse(new MountSiting(mount, List.of(), List.of(), Optional.empty())).preferring(site);
        List<MountSiting> sitings = Stream.concat(Stream.of(given), found.stream().filter(siting -> !siting.mount().equals(mount))).toList();
        if (pocket.isPresent()) {
            return new SitingRecord(job, features, sitings, Optional.of(given), pocket, "", Chooser.YARD);
        }
        SitingRecord beside = new Advice(hull, job, features).of(found);
        return new SitingRecord(job, features, sitings, Optional.of(given), beside.pocket(), beside.refusal(), Chooser.YARD);
    }

    /** The keel pocket there, as the job wishes it. */
    public Pocket pocket(Hull hull, Job job) throws CannotBeBuilt {
        PocketOutcome outcome = KeelPocketCut.cut(hull, job.transducer(), job.pocket(), job.particulars().forPocket(hull), at.x(), at.y());
        if (outcome instanceof PocketOutcome.Refused refused) {
            throw new CannotBeBuilt(refused.reason(), refused.remedy());
        }
        return ((PocketOutcome.Built) outcome).pocket();
    }
}
