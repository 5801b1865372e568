package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.garboard.cli.files.InputFault;
import org.garboard.cli.files.JobSource;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.FlatPoint;
import org.garboard.cutout.KeelPocketCut;
import org.garboard.cutout.PocketOutcome;
import org.garboard.cutout.made.PartsMade;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.cutout.template.Template;
import org.garboard.exchange.TablePlace;
import org.garboard.hull.Hull;
import org.garboard.job.Job;
import org.garboard.mount.Check;
import org.garboard.mount.KeelPocket;
import org.garboard.mount.water.RunningWater;
import org.garboard.siting.MountSiting;
import org.garboard.siting.PlanPoint;
import org.garboard.siting.Site;
import org.garboard.siting.Siting;
import org.garboard.solid.Solid;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A boat that is told in other units, with port and starboard changed over, has the same site on the other side and the same cut.
 * Something more stands on one side of every boat, so that few answers are a choice between two that are alike.
 */
class CopiesOfTheDemosTest {
    /** Of the numbers themselves: what sixteen digits of another unit may do to them. */
    private static final double SAME = 1e-7;

    /** Of the grid [m]: coarse, for the sake of time. */
    private static final double STEP = 0.05;

    @TempDir
    Path folder;

    /** @param pocket where the first mount that has a site is one */
    private record Answer(List<MountSiting> sitings, PlanPoint place, Optional<PocketOutcome> pocket, Optional<PartsMade> parts) {
    }

    @ParameterizedTest
    @CsvSource({"outboard-22,starboard,4.5,0.15", "outboard-39,port,6.6,0.5", "stepped-38,starboard,6.3,0.1",
        "inboard-58,starboard,11.07,1.59", "displacement-30,starboard,-3.1,0.36"})
    void law_mirroredAndInOtherUnits(String boat, String side, String x, String y) throws IOException, InputFault, CannotBeBuilt {
        Answer told = answer(copy(boat, "told", side, x, y), Optional.empty());
        Answer copy = answer(copy(boat, "copy", side, x, y).mirrored().inOtherUnits(), Optional.of(new PlanPoint(told.place.x(), -told.place.y())));
        assertSameSites(told.sitings, copy.sitings);
        assertEquals(told.pocket.isPresent(), copy.pocket.isPresent());
        told.pocket.ifPresent(pocket -> assertSamePocket((PocketOutcome.Built) pocket, (PocketOutcome.Built) copy.pocket.orElseThrow()));
        assertEquals(told.parts.isPresent(), copy.parts.isPresent());
        told.parts.ifPresent(parts -> assertSameParts(parts, copy.parts.orElseThrow()));
    }

    private CopiedDemo copy(String boat, String into, String side, String x, String y) throws IOException {
        return CopiedDemo.of(boat, folder.resolve(into)).at("cruise")
            .with("</features>", "<fitting name=\"Drain\" kind=\"drain\" side=\"" + side + "\"><at><x unit=\"m\">" + x + "</x><y unit=\"m\">" + y
                + "</y></at><length unit=\"mm\">60</length><width unit=\"mm\">60</width></fitting></features>");
    }

    /** @param place where the parts are cut; else at the first site */
    private static Answer answer(CopiedDemo demo, Optional<PlanPoint> place) throws InputFault, CannotBeBuilt {
        JobSource source = JobSource.read(demo.job(), TablePlace.BELOW_JOB);
        Job job = source.job();
        Hull hull = source.table().hull(job.fit());
        RunningWater running = source.running(hull);
        List<MountSiting> sitings = Siting.search(hull, job.sitingTask(hull, source.features(hull), running), STEP);
        MountSiting advised = sitings.stream().filter(siting -> !siting.sites().isEmpty()).findFirst().orElseThrow();
        PlanPoint site = place.orElseGet(() -> new PlanPoint(advised.sites().get(0).x(), advised.sites().get(0).y()));
        if (advised.mount() instanceof KeelPocket) {
            return new Answer(sitings, site, Optional.of(KeelPocketCut.cut(hull, job.transducer(), job.pocket(), job.particulars().forPocket(hull),
                site.x(), site.y())), Optional.empty());
        }
        return new Answer(sitings, site, Optional.empty(), Optional.of(PartsAtSite.at(hull, job, running, advised.mount(), site).made()));
    }

    private static void assertSamePocket(PocketOutcome.Built told, PocketOutcome.Built copy) {
        assertEquals(told.pocket().depth(), copy.pocket().depth(), SAME);
        assertEquals(told.pocket().volume(), copy.pocket().volume(), SAME);
        assertSameSolids(told.pocket().solids(), copy.pocket().solids());
    }

    private static void assertSameSites(List<MountSiting> told, List<MountSiting> copy) {
        for (int k = 0; k < told.size(); k++) {
            MountSiting one = told.get(k);
            MountSiting other = copy.get(k);
            assertEquals(one.sites().size(), other.sites().size(), one.mount().words());
            // of places equally good on either side the starboard one comes first, in both
            for (int s = 0; s < one.sites().size(); s++) {
                Site site = one.sites().get(s);
                assertSame(utilisation(site), utilisation(other.sites().get(s)), one.mount().words());
                assertSameSite(site, other.sites().stream().filter(mirrored -> isMirrored(site, mirrored)).findFirst().orElseThrow());
            }
            assertEquals(one.nearest().isPresent(), other.nearest().isPresent());
            one.nearest().ifPresent(nearest -> assertSameNearest(nearest, other.nearest().orElseThrow()));
            assertEquals(one.regions().size(), other.regions().size());
            for (int r = 0; r < one.regions().size(); r++) {
                assertEquals(one.regions().get(r).area(), other.regions().get(r).area(), 1e-6);
            }
        }
    }

    /** Where no place serves, port and starboard may come equally near, and then starboard is named: what governs is the same. */
    private static void assertSameNearest(Site told, Site copy) {
        if (told.y() * copy.y() <= 0) {
            assertSameSite(told, copy);
            return;
        }
        assertEquals(told.x(), copy.x(), SAME, told.mount().words());
        assertEquals(told.y(), copy.y(), SAME, told.mount().words());
        assertEquals(told.governing().map(Check::name), copy.governing().map(Check::name), told.mount().words());
        assertSame(utilisation(told), utilisation(copy), told.mount().words());
    }

    private static boolean isMirrored(Site told, Site copy) {
        return Math.abs(told.x() - copy.x()) < SAME && Math.abs(told.y() + copy.y()) < SAME;
    }

    private static double utilisation(Site site) {
        return site.governing().orElseThrow().utilisation();
    }

    /** But for the side. */
    private static void assertSameSite(Site told, Site copy) {
        String which = told.mount().words() + " " + told.x() + ", " + told.y() + " / " + copy.x() + ", " + copy.y();
        assertEquals(told.x(), copy.x(), SAME, which);
        assertEquals(Math.abs(told.y()), Math.abs(copy.y()), SAME, which);
        assertEquals(told.z(), copy.z(), SAME, which);
        assertSame(told.deadrise(), copy.deadrise(), which);
        assertSame(told.slope(), copy.slope(), which);
        told.window().ifPresent(window -> {
            assertEquals(window.forward(), copy.window().orElseThrow().forward(), SAME, which);
            assertEquals(window.aft(), copy.window().orElseThrow().aft(), SAME, which);
            assertEquals(window.inboard(), copy.window().orElseThrow().inboard(), SAME, which);
            assertEquals(window.outboard(), copy.window().orElseThrow().outboard(), SAME, which);
        });
        assertEquals(told.checks().size(), copy.checks().size());
        for (int c = 0; c < told.checks().size(); c++) {
            Check one = told.checks().get(c);
            Check other = copy.checks().get(c);
            assertEquals(one.name(), other.name());
            assertEquals(one.verdict(), other.verdict(), one.name() + ": " + one.sentence() + " / " + other.sentence());
            assertSame(one.demand(), other.demand(), one.name() + " at " + which);
            assertSame(one.limit(), other.limit(), one.name());
        }
    }

    /** A figure for people, in mm or degrees; NaN where there is none. */
    private static void assertSame(double one, double other, String which) {
        if (Double.isNaN(one) || Double.isInfinite(one)) {
            assertEquals(one, other, which);
        } else {
            assertEquals(one, other, 1e-5 * Math.max(1, Math.abs(one)), which);
        }
    }

    private static void assertSameParts(PartsMade told, PartsMade copy) {
        assertSameSolids(told.solids(), copy.solids());
        List<Template> ones = told.templates();
        List<Template> others = copy.templates();
        assertEquals(ones.size(), others.size());
        for (int k = 0; k < ones.size(); k++) {
            Template one = ones.get(k);
            Template other = others.get(k);
            assertEquals(one.name(), other.name());
            assertEquals(least(one.outline(), FlatPoint::u), least(other.outline(), FlatPoint::u), 1e-5, one.name());
            assertEquals(most(one.outline(), FlatPoint::u), most(other.outline(), FlatPoint::u), 1e-5, one.name());
            assertEquals(least(one.outline(), FlatPoint::v), -most(other.outline(), FlatPoint::v), 1e-5, one.name());
            assertEquals(most(one.outline(), FlatPoint::v), -least(other.outline(), FlatPoint::v), 1e-5, one.name());
            assertEquals(one.holes().size(), other.holes().size());
            for (int h = 0; h < one.holes().size(); h++) {
                assertEquals(one.holes().get(h).centre().u(), other.holes().get(h).centre().u(), 1e-5);
                assertEquals(one.holes().get(h).centre().v(), -other.holes().get(h).centre().v(), 1e-5);
                assertEquals(one.holes().get(h).diameter(), other.holes().get(h).diameter(), SAME);
            }
        }
    }

    private static void assertSameSolids(List<NamedSolid> ones, List<NamedSolid> others) {
        assertEquals(ones.stream().map(NamedSolid::name).toList(), others.stream().map(NamedSolid::name).toList());
        for (int k = 0; k < ones.size(); k++) {
            Solid one = ones.get(k).solid();
            Solid other = others.get(k).solid();
            double volume = one.volume();
            // fillings between outlines are not woven as mirror images, and so hollow a curved face by a little more or less
            assertEquals(volume, other.volume(), 2e-5 * volume, ones.get(k).name());
            assertEquals(least(one, one::x), least(other, other::x), SAME, ones.get(k).name());
            assertEquals(least(one, v -> -one.x(v)), least(other, v -> -other.x(v)), SAME, ones.get(k).name());
            assertEquals(least(one, one::y), least(other, v -> -other.y(v)), 1e-6, ones.get(k).name());
            assertEquals(least(one, v -> -one.y(v)), least(other, other::y), 1e-6, ones.get(k).name());
            assertEquals(least(one, one::z), least(other, other::z), 1e-6, ones.get(k).name());
        }
    }

    private static double least(Solid solid, IntToDoubleFunction of) {
        return IntStream.range(0, solid.vertices()).mapToDouble(of).min().orElseThrow();
    }

    private static double least(List<FlatPoint> outline, ToDoubleFunction<FlatPoint> of) {
        return outline.stream().mapToDouble(of).min().orElseThrow();
    }

    private static double most(List<FlatPoint> outline, ToDoubleFunction<FlatPoint> of) {
        return outline.stream().mapToDouble(of).max().orElseThrow();
    }
}
