package org.garboard.decision;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.LaidFeature;
import org.garboard.hull.Hull;
import org.garboard.job.Job;
import org.garboard.job.SitingRecord;
import org.garboard.mount.water.RunningWater;
import org.garboard.siting.MountSiting;
import org.garboard.siting.Site;
import org.garboard.siting.Siting;
import org.garboard.siting.SitingTask;

/**
 * What is decided for every transducer of a boat. They are placed in the order of the job: each with those before it where they
 * are advised, so that it keeps clear of them and they still serve. Where one finds no place so, those before it are tried at
 * their next best places; where that does not help either, the earlier ones keep their best, and it has none.
 */
public final class Decision {
    /** Searches of the bottom before the earlier ones are left where they are best (our choice: each takes some tenths of a second). */
    private static final int MOST_SEARCHES = 12;

    private final Hull hull;
    private final RunningWater running;
    private final List<Job> jobs;
    private final BottomFeatures features;
    private final Map<Searched, List<MountSiting>> found = new HashMap<>();
    private int searches;

    /** What a search depends on: whose it is, and what is on the bottom. */
    private record Searched(int k, BottomFeatures bottom) {
    }

    private Decision(Hull hull, RunningWater running, List<Job> jobs, BottomFeatures features) {
        this.hull = hull;
        this.running = running;
        this.jobs = jobs;
        this.features = features;
    }

    /**
     * A record for each job, in their order. The answer does not depend on the number of processors.
     *
     * @param running how the boat runs
     * @param jobs of one boat, one for each transducer
     * @param features what else is on the bottom
     */
    public static List<SitingRecord> of(Hull hull, RunningWater running, List<Job> jobs, BottomFeatures features) {
        Decision decision = new Decision(hull, running, jobs, features);
        if (jobs.size() == 1) {
            return List.of(decision.advice(0, features).of(decision.search(0, features)));
        }
        List<Placed> placed = decision.from(0, List.of()).orElseGet(decision::eachAtItsBest);
        return IntStream.range(0, jobs.size()).mapToObj(k -> decision.amongAll(k, placed)).toList();
    }

    /**
     * What is on the bottom for each transducer, the others being where they are advised; nothing is searched for a single one.
     */
    public static List<BottomFeatures> bottoms(Hull hull, RunningWater running, List<Job> jobs, BottomFeatures features) {
        return jobs.size() == 1 ? List.of(features) : of(hull, running, jobs, features).stream().map(SitingRecord::features).toList();
    }

    private Advice advice(int k, BottomFeatures bottom) {
        return new Advice(hull, jobs.get(k), bottom);
    }

    /** The same is not searched for twice. */
    private List<MountSiting> search(int k, BottomFeatures bottom) {
        return found.computeIfAbsent(new Searched(k, bottom), asked -> {
            searches += bottom.equals(features) ? 0 : 1;
            return Siting.search(hull, task(k, bottom));
        });
    }

    private SitingTask task(int k, BottomFeatures bottom) {
        return jobs.get(k).sitingTask(hull, bottom, running);
    }

    /** Places for the k-th and all after it; empty where there is none for one of them. */
    private Optional<List<Placed>> from(int k, List<Placed> before) {
        if (k == jobs.size()) {
            return Optional.of(before);
        }
        BottomFeatures bottom = features.and(laid(before));
        if (search(k, features).stream().allMatch(siting -> siting.sites().isEmpty())) {
            // wherever the others are
            return from(k + 1, with(before, placed(k, advice(k, bottom).of(search(k, bottom)))));
        }
        for (SitingRecord candidate : advice(k, bottom).each(search(k, bottom))) {
            Placed there = placed(k, candidate);
            if (leavesAlone(there, before)) {
                Optional<List<Placed>> whole = from(k + 1, with(before, there));
                if (whole.isPresent()) {
                    return whole;
                }
            }
            if (searches >= MOST_SEARCHES) {
                break;
            }
        }
        return Optional.empty();
    }

    private List<Placed> eachAtItsBest() {
        List<Placed> all = new ArrayList<>();
        while (all.size() < jobs.size()) {
            all.add(atItsBest(all.size(), List.copyOf(all)));
        }
        return all;
    }

    private Placed atItsBest(int k, List<Placed> before) {
        BottomFeatures bottom = features.and(laid(before));
        List<MountSiting> sitings = search(k, bottom);
        SitingRecord best = advice(k, bottom).of(sitings);
        if (best.advised().isEmpty()) {
            return placed(k, best);
        }
        return advice(k, bottom).each(sitings).stream().map(candidate -> placed(k, candidate))
            .filter(candidate -> leavesAlone(candidate, before)).findFirst()
            .orElse(placed(k, new SitingRecord(jobs.get(k), bottom, sitings, Optional.empty(), Optional.empty(),
                "every place that was found for it would disturb a transducer that stands before it in the job")));
    }

    /** Whether those before still serve with a later one where it is. */
    private boolean leavesAlone(Placed later, List<Placed> before) {
        return IntStream.range(0, before.size()).allMatch(k -> before.get(k).decided().advised().map(siting -> {
            Site site = siting.sites().get(0);
            return Siting.at(hull, task(k, features.and(laidBut(k, with(before, later)))), site.mount(), site.x(), site.y()).feasible();
        }).orElse(true));
    }

    /** The k-th where it was placed, its checks and windows anew with all the others where they are. */
    private SitingRecord amongAll(int k, List<Placed> placed) {
        SitingRecord own = placed.get(k).decided();
        BottomFeatures bottom = features.and(laidBut(k, placed));
        if (own.advised().isEmpty()) {
            return new SitingRecord(own.job(), bottom, own.sitings(), own.advised(), own.pocket(), own.refusal());
        }
        Site site = own.advised().get().sites().get(0);
        Site again = Siting.withWindow(hull, task(k, bottom), site.mount(), site.x(), site.y());
        List<MountSiting> sitings = search(k, bottom).stream()
            .map(siting -> siting.mount().equals(site.mount()) ? siting.preferring(again) : siting).toList();
        SitingRecord anew = advice(k, bottom).of(sitings);
        return new SitingRecord(own.job(), bottom, sitings,
            sitings.stream().filter(siting -> siting.mount().equals(site.mount())).findFirst(), anew.pocket(), anew.refusal());
    }

    private Placed placed(int k, SitingRecord decided) {
        return new Placed(decided, decided.advised().map(siting -> siting.sites().get(0))
            .map(site -> Siting.laid(hull, task(k, features), site.mount(), site.x(), site.y())));
    }

    private static List<LaidFeature> laid(List<Placed> placed) {
        return laidBut(-1, placed);
    }

    private static List<LaidFeature> laidBut(int k, List<Placed> placed) {
        return IntStream.range(0, placed.size()).filter(other -> other != k).mapToObj(placed::get).flatMap(other -> other.body().stream()).toList();
    }

    private static List<Placed> with(List<Placed> before, Placed later) {
        List<Placed> all = new ArrayList<>(before);
        all.add(later);
        return all;
    }
}
