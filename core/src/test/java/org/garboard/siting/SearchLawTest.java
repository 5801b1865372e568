package org.garboard.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.hull.Hull;
import org.garboard.processors.SoMany;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** What must hold of every search, on several hulls, bodies and kinds of job. */
class SearchLawTest {
    private static final GeometryFactory PLAN = new GeometryFactory();

    private record Case(String name, Hull hull, SitingTask task) {
    }

    private static List<Case> cases() {
        SitingTask small = Boats.task(0.55, 0.140, 0.090, 20, Boats.FLUSH, Boats.POCKET);
        SitingTask large = Boats.task(0.62, 0.450, 0.220, 22, Boats.FLUSH, Boats.POCKET);
        SitingTask upright = Boats.task(0.55, 0.140, 0.090, 0, Boats.POCKET);
        return List.of(
            new Case("wedge, upright", Boats.prismaticV(17), upright),
            new Case("warped, upright, feet", Boats.warpedV(30, 12), Boats.inFeet(upright)),
            new Case("39 ft, upright", Boats.thirtyNineFeet(), upright),
            new Case("round, upright", Boats.cylinder(2.5), upright),
            new Case("two-angle wedge, upright", Boats.brokenV(22, 17), upright),
            new Case("wedge", Boats.prismaticV(17), small),
            new Case("wedge, feet", Boats.prismaticV(17), Boats.inFeet(small)),
            new Case("two-angle wedge", Boats.brokenV(22, 17), large),
            new Case("warped", Boats.warpedV(30, 12), small),
            new Case("warped, feet", Boats.warpedV(30, 12), Boats.inFeet(large)),
            new Case("round", Boats.cylinder(2.5), small),
            new Case("sphere", Boats.sphere(7), Boats.task(0.9, 0.140, 0.090, 5, Boats.FLUSH, Boats.POCKET)),
            new Case("39 ft", Boats.thirtyNineFeet(), small),
            new Case("39 ft, feet", Boats.thirtyNineFeet(), Boats.inFeet(large)));
    }

    @Test
    void law_everySitePassesWhenAskedAgain() {
        int sites = 0;
        for (Case c : cases()) {
            for (MountSiting siting : Siting.search(c.hull(), c.task())) {
                assertEquals(siting.regions().size(), siting.sites().size());
                for (Site site : siting.sites()) {
                    Site again = Siting.at(c.hull(), c.task(), site.mount(), site.x(), site.y());
                    assertTrue(again.feasible(), c.name());
                    assertEquals(site.checks(), again.checks());
                    assertEquals(Optional.empty(), again.window());
                    sites++;
                }
            }
        }
        assertTrue(sites > 15, sites + " sites");
    }

    @Test
    void law_sitesAreWhereAYardCanMark() {
        for (Case c : cases()) {
            double step = c.task().mark().step();
            for (MountSiting siting : Siting.search(c.hull(), c.task())) {
                for (Site site : siting.sites()) {
                    assertEquals(Math.rint(site.x() / step), site.x() / step, 1e-6, c.name());
                    assertEquals(Math.rint(site.girth() / step), site.girth() / step, 1e-6, c.name());
                }
            }
        }
    }

    /** Each way to its end the site still serves; one step and a micron farther it does not. */
    @Test
    void law_windowsEndWhereChecksFail() {
        for (Case c : cases()) {
            double step = c.task().mark().step();
            for (MountSiting siting : Siting.search(c.hull(), c.task())) {
                for (Site site : siting.sites()) {
                    Window window = site.window().orElseThrow();
                    assertTrue(serves(c, site, 1e-6 - window.forward()), c.name());
                    assertFalse(serves(c, site, -window.forward() - step - 1e-6), c.name());
                    assertTrue(serves(c, site, window.aft() - 1e-6), c.name());
                    assertFalse(serves(c, site, window.aft() + step + 1e-6), c.name());
                }
            }
        }
    }

    private static boolean serves(Case c, Site site, double aft) {
        return Siting.at(c.hull(), c.task(), site.mount(), site.x() + aft, site.y()).feasible();
    }

    @Test
    void law_theAnswerDoesNotDependOnTheProcessors() {
        for (Case c : cases()) {
            List<MountSiting> one = SoMany.processors(1, () -> Siting.search(c.hull(), c.task()));
            for (int processors : new int[] {2, 3, 8}) {
                assertEquals(one, SoMany.processors(processors, () -> Siting.search(c.hull(), c.task())), c.name());
            }
        }
    }

    /** Half the step: as many regions, areas that differ by a millimetre round the rim, sites within a step. */
    @Test
    void law_aFinerGridGivesTheSameAnswer() {
        for (Case c : cases()) {
            List<MountSiting> coarse = Siting.search(c.hull(), c.task(), 0.010);
            List<MountSiting> fine = Siting.search(c.hull(), c.task(), 0.005);
            for (int m = 0; m < coarse.size(); m++) {
                assertEquals(coarse.get(m).regions().size(), fine.get(m).regions().size(), c.name());
                for (int r = 0; r < coarse.get(m).regions().size(); r++) {
                    Region region = fine.get(m).regions().get(r);
                    assertEquals(region.area(), coarse.get(m).regions().get(r).area(),
                        0.001 * polygon(region).getLength(), c.name());
                    Site at = fine.get(m).sites().get(r);
                    Site from = coarse.get(m).sites().get(r);
                    assertEquals(at.x(), from.x(), 0.010 + c.task().mark().step(), c.name());
                    assertEquals(at.girth(), from.girth(), 0.010 + c.task().mark().step(), c.name());
                }
            }
        }
    }

    /**
     * Places inside a flush region serve by the exact checks, places outside all do not. Left out are places
     * nearer to a rim than a cell's diagonal over two, where corners are cut, and those that use up a limit to
     * within a hundredth, which the search's few samples do not tell apart.
     */
    @Test
    void law_regionsHoldThePlacesThatServe() {
        for (Case c : cases().stream().filter(each -> each.task().mounts().contains(Boats.FLUSH)).toList()) {
            MountSiting siting = Siting.search(c.hull(), c.task()).get(0);
            List<Polygon> regions = siting.regions().stream().map(SearchLawTest::polygon).toList();
            regions.forEach(region -> assertTrue(region.isValid(), c.name()));
            Geometry all = PLAN.createMultiPolygon(regions.toArray(Polygon[]::new));
            Ground ground = new Ground(c.hull()::height, BottomLines.of(c.hull()), Obstacles.NONE, c.task().draught());
            PlaceChecks checks = new PlaceChecks(c.hull(), ground, c.task(), Boats.FLUSH);
            int inside = 0;
            for (double x = 0.013; x < c.hull().afterEnd(); x += 0.1237) {
                for (double y = 0.007; y < c.hull().bottomEdge().y(x); y += 0.0471) {
                    Geometry place = PLAN.createPoint(new Coordinate(x, y));
                    Site site = checks.at(x, y);
                    double utilisation = site.governing().orElseThrow().utilisation();
                    if (all.getBoundary().distance(place) > 0.0071 && Math.abs(utilisation - 1) > 0.01) {
                        boolean in = all.contains(place);
                        inside += in ? 1 : 0;
                        assertEquals(in, site.feasible(), c.name() + " at " + x + ", " + y);
                    }
                }
            }
            assertTrue(inside > 20 || regions.isEmpty(), c.name() + ": " + inside);
        }
    }

    private static Polygon polygon(Region region) {
        LinearRing[] holes = region.holes().stream().map(SearchLawTest::ring).toArray(LinearRing[]::new);
        Polygon polygon = PLAN.createPolygon(ring(region.outline()), holes);
        assertEquals(polygon.getArea(), region.area(), 1e-9);
        return polygon;
    }

    private static LinearRing ring(List<PlanPoint> points) {
        List<Coordinate> ring = new ArrayList<>();
        points.forEach(point -> ring.add(new Coordinate(point.x(), point.y())));
        ring.add(ring.get(0));
        return PLAN.createLinearRing(ring.toArray(Coordinate[]::new));
    }
}
