package org.garboard.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.BottomFeatures.FeatureList;
import org.garboard.craft.LaidFeature;
import org.garboard.craft.Sides;
import org.garboard.craft.SoundBeam;
import org.garboard.craft.Transducer;
import org.garboard.craft.TransducerDetails;
import org.garboard.geometry.Quad;
import org.garboard.hull.Fit;
import org.garboard.hull.Hull;
import org.garboard.job.DrawingWish;
import org.garboard.job.Job;
import org.garboard.job.Particulars;
import org.garboard.job.SitingRecord;
import org.garboard.mount.Check;
import org.garboard.mount.FairedThroughHull;
import org.garboard.mount.FlushThroughHull;
import org.garboard.mount.Mount;
import org.garboard.mount.PocketWish;
import org.garboard.mount.Verdict;
import org.garboard.mount.water.RunningWater;
import org.garboard.processors.SoMany;
import org.garboard.siting.Boats;
import org.garboard.siting.MountSiting;
import org.garboard.siting.Site;
import org.garboard.siting.Siting;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

class DecisionTest {
    private static final Hull WEDGE = Boats.prismaticV(20);
    private static final BottomFeatures BARE = new BottomFeatures(List.of(), FeatureList.GIVEN);
    private static final DrawingWish WISH = new DrawingWish(DrawingWish.Units.MILLIMETRES, DrawingWish.Paper.A2, DrawingWish.Orientation.LANDSCAPE, DrawingWish.Projection.FIRST_ANGLE,
        "D-1", "Test yard", "Loft", "", "2026-03-14", "A");

    private static Job job(String name, double length, double width, double inclinationDeg) {
        Transducer body = new Transducer(name, length, width, 0.03, 0, 0.02, Angle.ofDegrees(inclinationDeg));
        List<Mount> mounts = List.of(new FlushThroughHull());
        return new Job("Wedge", "", "offsets.csv", Fit.EXACT, 0.4, body, mounts, Optional.empty(),
            new PocketWish(OptionalDouble.empty(), 0.0025, 8), WISH, Particulars.UNTOLD);
    }

    private static Job small(String name) {
        return job(name, 0.10, 0.08, 20);
    }

    /** Covers a rectangle of one side in plan. */
    private static LaidFeature over(String name, Sides sides, double fromX, double toX, double fromY, double toY) {
        return new LaidFeature(name, "anode", sides, List.of(Quad.of(fromX, fromY, toX, fromY, toX, toY, fromX, toY)), Optional.empty());
    }

    private static Site place(SitingRecord record) {
        return record.advised().orElseThrow().sites().get(0);
    }

    @Test
    void law_aSingleTransducerGoesWhereTheSearchPutsIt() {
        Job job = small("one");
        SitingRecord alone = Decision.of(WEDGE, RunningWater.UNTOLD, List.of(job), BARE).get(0);
        assertEquals(Siting.search(WEDGE, job.sitingTask(WEDGE, BARE, RunningWater.UNTOLD)), alone.sitings());
    }

    /** The first as if it were alone; the second clear of it by what a feature asks; each is told of the other; all checks met. */
    @Test
    void law_theSecondKeepsClearOfTheFirst() {
        List<SitingRecord> both = Decision.of(WEDGE, RunningWater.UNTOLD, List.of(small("one"), small("other")), BARE);
        Site first = place(both.get(0));
        Site second = place(both.get(1));
        Site alone = place(Decision.of(WEDGE, RunningWater.UNTOLD, List.of(small("one")), BARE).get(0));
        assertEquals(alone.x(), first.x());
        assertEquals(alone.y(), first.y());
        double apart = Math.max(Math.abs(first.x() - second.x()) - 0.10, Math.abs(first.y() - second.y()) - 0.08);
        assertTrue(apart >= 0.05 - 1e-9, "apart by " + apart);
        assertTrue(first.feasible() && second.feasible());
        assertEquals(List.of("other"), both.get(0).features().laid().stream().map(LaidFeature::name).toList());
        assertEquals(List.of("one"), both.get(1).features().laid().stream().map(LaidFeature::name).toList());
    }

    /**
     * All is covered but two openings to starboard: one aft, where either body goes but not both, and one forward, where the
     * small one goes alone. By itself the small one would go aft.
     */
    @Test
    void theFirstMakesRoomWhereTheSecondHasNoOtherPlace() {
        BottomFeatures covered = new BottomFeatures(List.of(
            over("port", Sides.PORT, 0, 6, 0, 1),
            over("fore", Sides.STARBOARD, 0, 2, 0, 1), over("inside of B", Sides.STARBOARD, 2, 2.3, 0, 0.2),
            over("outside of B", Sides.STARBOARD, 2, 2.3, 0.5, 1), over("between", Sides.STARBOARD, 2.3, 4.65, 0, 1),
            over("inside of A", Sides.STARBOARD, 4.65, 5.2, 0, 0.2), over("outside of A", Sides.STARBOARD, 4.65, 5.2, 0.6, 1),
            over("aft", Sides.STARBOARD, 5.2, 6, 0, 1)), FeatureList.GIVEN);
        Job large = job("large", 0.40, 0.28, 20);
        assertTrue(place(Decision.of(WEDGE, RunningWater.UNTOLD, List.of(small("small")), covered).get(0)).x() > 4.65);
        List<SitingRecord> both = Decision.of(WEDGE, RunningWater.UNTOLD, List.of(small("small"), large), covered);
        assertTrue(place(both.get(0)).x() < 2.3, "small at " + place(both.get(0)).x());
        assertTrue(place(both.get(1)).x() > 4.65, "large at " + place(both.get(1)).x());
    }

    /**
     * A face on a block, which hangs by what its job asks, and one that lies flush: whichever stands first, all is known of how they
     * keep clear of each other, and the room is what is between the block and the body.
     */
    @Test
    void law_ofABlockBesideAFlushFaceAllIsKnownWhicheverStandsFirst() {
        Job block = blocked("block");
        Job flush = heard(small("flush"));
        for (List<Job> jobs : List.of(List.of(block, flush), List.of(flush, block))) {
            List<SitingRecord> both = Decision.of(WEDGE, RunningWater.UNTOLD, jobs, BARE);
            for (int k = 0; k < 2; k++) {
                Site site = place(both.get(k));
                LaidFeature other = both.get(k).features().laid().get(0);
                assertTrue(other.height().isPresent(), other.name());
                boolean isBlock = both.get(k).job() == block;
                Check room = check(site, "room to another transducer");
                assertEquals(Verdict.MET, room.verdict(), room.sentence());
                double length = isBlock ? block.installation().block().length() : 0.10;
                double width = isBlock ? block.installation().block().width() : 0.08;
                double between = other.gap(site.x(), site.y(), length, width);
                assertTrue(room.demand() <= 1000 * between + 1e-6 && between >= 0.3, "between " + between + ", of which counts " + room.demand());
                assertTrue(check(site, "beam clear").verdict() == Verdict.MET, check(site, "beam clear").sentence());
            }
        }
    }

    private static Check check(Site site, String name) {
        return site.checks().stream().filter(check -> check.name().startsWith(name)).findFirst().orElseThrow();
    }

    private static Job heard(Job job) {
        SoundBeam beam = new SoundBeam(100e3, Angle.ofDegrees(20), Angle.ofDegrees(20));
        Particulars untold = Particulars.UNTOLD;
        return new Job(job.boat(), "", job.tableFile(), job.fit(), job.draught(), job.transducer(), job.mounts(), job.features(), job.pocket(), job.drawing(),
            new Particulars(new TransducerDetails(List.of(beam), Optional.empty(), Optional.empty(), Optional.empty()), untold.skin(), untold.rooms(), untold.supports(),
                untold.craft(), untold.fairing(), untold.bracket(), untold.preference(), untold.limits()));
    }

    private static Job blocked(String name) {
        Job job = heard(job(name, 0.12, 0.10, 0));
        return new Job(job.boat(), "", job.tableFile(), job.fit(), job.draught(), job.transducer(), List.of(new FairedThroughHull()), job.features(), job.pocket(),
            job.drawing(), job.particulars());
    }

    /** By this a search with the same neighbours is known to be the same, and is not made twice. */
    @Test
    void law_whatIsOnTheBottomIsTheSameForTheSameNeighbours() {
        List<Job> jobs = List.of(small("one"), small("other"));
        List<SitingRecord> first = Decision.of(WEDGE, RunningWater.UNTOLD, jobs, BARE);
        List<SitingRecord> again = Decision.of(WEDGE, RunningWater.UNTOLD, jobs, BARE);
        assertEquals(first.get(0).features(), again.get(0).features());
        assertEquals(first.get(0).features().hashCode(), again.get(0).features().hashCode());
    }

    /** One that finds no place anywhere moves nobody, and is told by itself with what it lacks. */
    @Test
    void law_oneWithoutAPlaceLeavesTheOthersAlone() {
        List<SitingRecord> both = Decision.of(WEDGE, RunningWater.UNTOLD, List.of(job("upright", 0.1, 0.08, 0), small("leaning")), BARE);
        assertTrue(both.get(0).advised().isEmpty());
        assertEquals("lean of the element", both.get(0).sitings().get(0).nearest().orElseThrow().governing().orElseThrow().name());
        Site alone = place(Decision.of(WEDGE, RunningWater.UNTOLD, List.of(small("leaning")), BARE).get(0));
        assertEquals(alone.x(), place(both.get(1)).x());
        assertEquals(alone.y(), place(both.get(1)).y());
    }

    @Test
    void law_theAnswerDoesNotDependOnTheProcessors() {
        List<Job> jobs = List.of(small("one"), small("two"), small("three"));
        assertEquals(sitings(1, jobs), sitings(3, jobs));
    }

    private static List<List<MountSiting>> sitings(int processors, List<Job> jobs) {
        return SoMany.processors(processors, () -> Decision.of(WEDGE, RunningWater.UNTOLD, jobs, BARE)).stream().map(SitingRecord::sitings).toList();
    }
}
