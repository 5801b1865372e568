package org.garboard.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.craft.BottomFeatures;
import org.garboard.cutout.KeelPocketCut;
import org.garboard.cutout.Pocket;
import org.garboard.cutout.PocketOutcome;
import org.garboard.hull.Hull;
import org.garboard.job.Job;
import org.garboard.job.SitingRecord;
import org.garboard.mount.KeelPocket;
import org.garboard.siting.MountSiting;
import org.garboard.siting.Site;

/** Which of the sites found for one transducer is advised: of the first mount that has one and can be built, the best. */
final class Advice {
    private final Hull hull;
    private final Job job;
    private final BottomFeatures features;

    Advice(Hull hull, Job job, BottomFeatures features) {
        this.hull = hull;
        this.job = job;
        this.features = features;
    }

    SitingRecord of(List<MountSiting> sitings) {
        Optional<Site> place = sitings.stream().filter(Advice::isPocket).flatMap(siting -> siting.sites().stream()).findFirst();
        Optional<PocketOutcome> outcome = place.map(site -> KeelPocketCut.cut(hull, job.transducer(), job.pocket(),
            job.particulars().forPocket(hull), site.x(), site.y()));
        Optional<Pocket> pocket = outcome.flatMap(Advice::built);
        boolean asked = sitings.stream().anyMatch(Advice::isPocket);
        String refusal = asked && pocket.isEmpty()
            ? outcome.map(Advice::refusal).orElse("no place on the keel line serves for a pocket") : "";
        Optional<MountSiting> advised = sitings.stream()
            .filter(siting -> !siting.sites().isEmpty() && (!isPocket(siting) || pocket.isPresent()))
            .findFirst();
        return new SitingRecord(job, features, sitings, advised, pocket, refusal);
    }

    /** Every place that may be advised, the most advisable first: a record for each, with it first among its mount's sites. */
    List<SitingRecord> each(List<MountSiting> sitings) {
        List<SitingRecord> all = new ArrayList<>();
        for (MountSiting siting : sitings) {
            for (Site site : siting.sites()) {
                SitingRecord record = of(sitings.stream().map(other -> other == siting ? siting.preferring(site) : other).toList());
                record.sitings().stream().filter(other -> other.mount().equals(siting.mount()) && (!isPocket(other) || record.pocket().isPresent()))
                    .findFirst().ifPresent(advised -> all.add(new SitingRecord(job, features, record.sitings(), Optional.of(advised),
                        record.pocket(), record.refusal())));
            }
        }
        return all;
    }

    private static boolean isPocket(MountSiting siting) {
        return siting.mount() instanceof KeelPocket;
    }

    private static Optional<Pocket> built(PocketOutcome outcome) {
        return outcome instanceof PocketOutcome.Built built ? Optional.of(built.pocket()) : Optional.empty();
    }

    private static String refusal(PocketOutcome outcome) {
        PocketOutcome.Refused refused = (PocketOutcome.Refused) outcome;
        return refused.reason() + "; what works: " + refused.remedy();
    }
}
