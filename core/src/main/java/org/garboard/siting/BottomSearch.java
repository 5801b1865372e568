package org.garboard.siting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.garboard.craft.Sides;
import org.garboard.hull.Hull;
import org.garboard.mount.Mount;
import org.garboard.mount.Seat;

/** The search of one hull's bottom on a grid, mount by mount. */
final class BottomSearch {
    /** Regions kept of a mount (our choice, because a sheet shows no more and the small ones serve least). */
    private static final int REGIONS_KEPT = 8;

    private final Hull hull;
    private final SitingTask task;
    private final BottomLines lines;
    private final BottomGrid grid;

    BottomSearch(Hull hull, SitingTask task, double step) {
        this.hull = hull;
        this.task = task;
        this.lines = BottomLines.of(hull);
        this.grid = BottomGrid.read(hull, lines, step);
    }

    MountSiting of(Mount mount) {
        List<Region> regions = new ArrayList<>();
        List<Site> sites = new ArrayList<>();
        List<SiteFinder> finders = new ArrayList<>();
        Asked asked = Asked.of(hull, task, mount);
        for (Sides side : sides(mount)) {
            Ground ground = new Ground(lines.skin(hull), lines, Obstacles.of(task.features(), side), task.draught(), side);
            Nodes nodes = nodes(mount, ground);
            Suitability suitability = Suitability.whereItServes(nodes, asked);
            SiteFinder finder = new SiteFinder(hull, nodes, mount, task.mark(), new PlaceChecks(hull, ground, task, mount, asked));
            List<Region> here = new ArrayList<>();
            for (FeasiblePart part : parts(mount, suitability)) {
                Optional<Site> site = here.size() < REGIONS_KEPT ? finder.best(part, suitability) : Optional.empty();
                site.ifPresent(found -> {
                    here.add(part.region().on(side));
                    sites.add(found);
                });
            }
            regions.addAll(here);
            finders.add(finder);
        }
        List<Site> nearest = sites.isEmpty() ? finders.stream().flatMap(finder -> finder.nearest(asked).stream()).toList() : List.of();
        regions.sort(Comparator.comparingDouble(Region::area).reversed());
        return new MountSiting(mount, regions, bestFirst(sites), bestFirst(nearest).stream().findFirst());
    }

    /** How the whole bottom serves a mount, each side by itself where they are not alike. */
    List<UtilisationMap> map(Mount mount) {
        Asked asked = Asked.of(hull, task, mount);
        double[] alongTransom = mount.seat() == Seat.BEHIND_TRANSOM ? new double[] {TransomBed.edge(lines)} : new double[0];
        return sides(mount).stream().map(side -> {
            Ground ground = new Ground(lines.skin(hull), lines, Obstacles.of(task.features(), side), task.draught(), side);
            return new UtilisationMap(mount, side, grid, alongTransom,
                Suitability.everywhere(nodes(mount, ground), asked), asked.names());
        }).toList();
    }

    /** Each side by itself where they are not alike. */
    private List<Sides> sides(Mount mount) {
        if (mount.seat() == Seat.ATHWART_KEEL) {
            return List.of(Ground.sideOf(task.installation().pocket().aside()));
        }
        return task.isSymmetrical(mount) ? List.of(Sides.BOTH) : List.of(Sides.STARBOARD, Sides.PORT);
    }

    /** Along the transom the skin itself is asked, elsewhere the grid. */
    private Nodes nodes(Mount mount, Ground ground) {
        Ground read = mount.seat() == Seat.BEHIND_TRANSOM ? ground : ground.on(grid.skin());
        return new Nodes(grid, mount.seat(), () -> Beds.coarse(read, mount, task.installation()));
    }

    private List<FeasiblePart> parts(Mount mount, Suitability suitability) {
        return switch (mount.seat()) {
            case BESIDE_KEEL -> FeasibleParts.ofBottom(grid, suitability);
            case ATHWART_KEEL -> FeasibleParts.ofKeelLine(grid, suitability,
                Math.abs(task.installation().pocket().aside()), mount.footprint(task.installation()).width());
            case BEHIND_TRANSOM -> FeasibleParts.ofTransom(grid, suitability, TransomBed.edge(lines),
                task.installation().transducer().length());
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
