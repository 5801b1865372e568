package org.garboard.siting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.garboard.craft.Sides;
import org.garboard.hull.Hull;
import org.garboard.mount.Demand;
import org.garboard.mount.Installation;
import org.garboard.mount.Mount;

/** The search of one hull's bottom on a grid, mount by mount. */
final class BottomSearch {
    /** Regions kept of a mount (our choice, because a sheet shows no more and the small ones serve least). */
    private static final int REGIONS_KEPT = 8;

    private final Hull hull;
    private final SitingTask task;
    private final int threads;
    private final Ground ground;
    private final BottomGrid grid;

    BottomSearch(Hull hull, SitingTask task, double step, int threads) {
        this.hull = hull;
        this.task = task;
        this.threads = threads;
        BottomLines lines = BottomLines.of(hull);
        this.ground = new Ground(lines.skin(hull), lines, Obstacles.of(task.features(), Sides.BOTH),
            task.draught());
        this.grid = BottomGrid.read(hull, ground.lines(), step, threads);
    }

    MountSiting of(Mount mount) {
        Suitability suitability = suitability(mount);
        PlaceChecks checks = new PlaceChecks(hull, ground, task, mount);
        SiteFinder finder = new SiteFinder(hull, grid, suitability, mount, task.mark(), checks);
        List<Region> regions = new ArrayList<>();
        List<Site> sites = new ArrayList<>();
        for (FeasiblePart part : parts(mount, suitability)) {
            Optional<Site> site = regions.size() < REGIONS_KEPT ? finder.best(part) : Optional.empty();
            site.ifPresent(found -> {
                regions.add(part.region());
                sites.add(found);
            });
        }
        return new MountSiting(mount, regions, bestFirst(sites), sites.isEmpty() ? finder.nearest() : Optional.empty());
    }

    private Suitability suitability(Mount mount) {
        Installation installation = task.installation();
        List<Demand> demands = Demands.of(hull, task, mount);
        Ground gridGround = ground.on(grid.skin());
        return switch (mount.seat()) {
            case BESIDE_KEEL -> Suitability.ofBottom(grid,
                () -> Beds.coarse(gridGround, mount, installation), demands, threads);
            case ATHWART_KEEL -> Suitability.ofKeelLine(grid,
                () -> Beds.coarse(gridGround, mount, installation), demands, threads);
        };
    }

    private List<FeasiblePart> parts(Mount mount, Suitability suitability) {
        return switch (mount.seat()) {
            case BESIDE_KEEL -> FeasibleParts.ofBottom(grid, suitability);
            case ATHWART_KEEL -> FeasibleParts.ofKeelLine(grid, suitability,
                mount.footprint(task.installation()).width());
        };
    }

    /** By the same rule as within a region. */
    private List<Site> bestFirst(List<Site> sites) {
        List<Site> open = new ArrayList<>(sites);
        List<Site> sorted = new ArrayList<>();
        while (!open.isEmpty()) {
            double least = open.stream().mapToDouble(BottomSearch::utilisation).min().getAsDouble();
            Site best = open.stream().filter(site -> utilisation(site) <= least + SiteFinder.EQUAL)
                .min(Comparator.comparingDouble(site -> SiteFinder.fromFoot(hull, site.x(), site.y()))).orElseThrow();
            sorted.add(best);
            open.remove(best);
        }
        return sorted;
    }

    private static double utilisation(Site site) {
        return site.governing().orElseThrow().utilisation();
    }
}
