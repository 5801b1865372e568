package org.garboard.cli;

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
import org.garboard.siting.Siting;

/** From a job and its hull to the decision: search the bottom, cut the pocket, advise. */
final class SitingChain {
    private final Hull hull;
    private final Job job;
    private final BottomFeatures features;

    private SitingChain(Hull hull, Job job, BottomFeatures features) {
        this.hull = hull;
        this.job = job;
        this.features = features;
    }

    /** The decision. It does not depend on the number of threads. */
    static SitingRecord decide(Hull hull, Job job, BottomFeatures features, int threads) {
        return new SitingChain(hull, job, features).decide(Siting.search(hull, job.sitingTask(hull, features), threads));
    }

    private SitingRecord decide(List<MountSiting> sitings) {
        Optional<Site> place = sitings.stream()
            .filter(SitingChain::isPocket)
            .flatMap(siting -> siting.sites().stream())
            .findFirst();
        Optional<PocketOutcome> outcome = place.map(site ->
            KeelPocketCut.cut(hull, job.transducer(), job.pocket(), site.x()));
        Optional<Pocket> pocket = outcome.flatMap(SitingChain::built);
        boolean asked = sitings.stream().anyMatch(SitingChain::isPocket);
        String refusal = asked && pocket.isEmpty()
            ? outcome.map(SitingChain::refusal).orElse("no place on the keel line serves for a pocket") : "";
        Optional<MountSiting> advised = sitings.stream()
            .filter(siting -> !siting.sites().isEmpty() && (!isPocket(siting) || pocket.isPresent()))
            .findFirst();
        return new SitingRecord(job, features, sitings, advised, pocket, refusal);
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
