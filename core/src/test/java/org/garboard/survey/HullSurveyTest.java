package org.garboard.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.garboard.craft.LaidFeature;
import org.garboard.craft.Sides;
import org.garboard.geometry.Quad;
import org.garboard.hull.Hull;
import org.garboard.offsets.Entry;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.Measure;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.SkinSurface;
import org.garboard.offsets.Station;
import org.garboard.offsets.TableLine;
import org.garboard.survey.SurveyPlace.Along;
import org.garboard.survey.SurveyPlace.Out;
import org.garboard.survey.SurveyPlace.Side;
import org.junit.jupiter.api.Test;

/** On a wedge of 3 : 4, half-breadth 0.8 m and 0.6 m up at the chine, whose topsides stand plumb for another 0.5 m; 6 m long. */
class HullSurveyTest {
    private static final OffsetTable TABLE = table();
    private static final Hull HULL = Hull.through(TABLE);
    private static final List<LaidFeature> FEATURES = List.of(
        new LaidFeature("Intake", "intake", Sides.PORT, List.of(Quad.of(3, 0.2, 3.4, 0.2, 3.4, 0.4, 3, 0.4)), Optional.empty()));

    private static OffsetTable table() {
        List<Station> stations = new ArrayList<>();
        for (int i = 0; i <= 4; i++) {
            stations.add(new Station("S" + i, 1.5 * i));
        }
        return new OffsetTable("Wedge", SkinSurface.OUTSIDE_OF_SKIN, 0, stations, List.of(
            line(LineKind.KEEL, "Keel", Measure.HEIGHT, 0),
            line(LineKind.CHINE, "Chine", Measure.HEIGHT, 0.6), line(LineKind.CHINE, "Chine", Measure.HALF_BREADTH, 0.8),
            line(LineKind.SHEER, "Sheer", Measure.HEIGHT, 1.1), line(LineKind.SHEER, "Sheer", Measure.HALF_BREADTH, 0.8)));
    }

    private static TableLine line(LineKind kind, String name, Measure measure, double value) {
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i <= 4; i++) {
            entries.add(new Entry(i, value));
        }
        return new TableLine(kind, name, 0, measure, entries);
    }

    private static HullSurvey lay(Along along, Out out, Side side) {
        SurveyFinding finding = new SurveyFinding("1", new SurveyPlace(Optional.ofNullable(along), out, Optional.ofNullable(side)), "crack", "", "", "", "");
        return HullSurvey.lay(List.of(finding), HULL, TABLE, FEATURES);
    }

    private static List<Spot> spots(Along along, Out out, Side side) {
        HullSurvey survey = lay(along, out, side);
        assertEquals(List.of(), survey.faults());
        return survey.findings().get(0).spots();
    }

    private static void assertAt(double x, double y, double z, Spot.Face face, Spot spot) {
        assertEquals(x, spot.point().getX(), 1e-9);
        assertEquals(y, spot.point().getY(), 1e-9);
        assertEquals(z, spot.point().getZ(), 1e-9);
        assertEquals(face, spot.face());
    }

    /** Along the slope of 3 : 4 a girth g lies 0.8 g out and 0.6 g up. */
    @Test
    void exact_girthsOfAWedge() {
        assertAt(3, 0.4, 0.3, Spot.Face.BOTTOM, spots(new SurveyPlace.AtStation("S2"), new SurveyPlace.Girth(0.5), Side.STARBOARD).get(0));
        assertAt(2, -0.4, 0.3, Spot.Face.BOTTOM, spots(new SurveyPlace.AftOfOrigin(2), new SurveyPlace.Girth(0.5), Side.PORT).get(0));
        assertAt(5, -0.4, 0.3, Spot.Face.BOTTOM, spots(new SurveyPlace.AheadOfAfterEnd(1), new SurveyPlace.HalfBreadth(0.4), Side.PORT).get(0));
        assertAt(2, 0, 0, Spot.Face.BOTTOM, spots(new SurveyPlace.AftOfOrigin(2), new SurveyPlace.Girth(0), null).get(0));
    }

    /** Where the side stands plumb there is no height over a half-breadth, but there is a girth. */
    @Test
    void exact_girthGoesOnUpAPlumbSide() {
        assertAt(2, 0.8, 0.85, Spot.Face.TOPSIDES, spots(new SurveyPlace.AftOfOrigin(2), new SurveyPlace.Girth(1.25), Side.STARBOARD).get(0));
        assertAt(2, 0.8, 1.1, Spot.Face.TOPSIDES, spots(new SurveyPlace.AftOfOrigin(2), new SurveyPlace.Girth(1.5), Side.STARBOARD).get(0));
    }

    @Test
    void exact_regionsAreMarkedInTheirMiddle() {
        assertAt(3, 0.4, 0.3, Spot.Face.BOTTOM, spots(null, new SurveyPlace.InRegion("Bottom"), Side.STARBOARD).get(0));
        assertAt(1, -0.8, 0.85, Spot.Face.TOPSIDES, spots(new SurveyPlace.AftOfOrigin(1), new SurveyPlace.InRegion("topsides"), Side.PORT).get(0));
        assertAt(4.5, -0.8, 0.6, Spot.Face.BOTTOM, spots(new SurveyPlace.AtStation("S3"), new SurveyPlace.InRegion("chine"), Side.PORT).get(0));
        assertAt(6, 0, 0, Spot.Face.BOTTOM, spots(null, new SurveyPlace.InRegion("transom"), null).get(0));
        assertAt(3.2, -0.3, 0.225, Spot.Face.BOTTOM, spots(null, new SurveyPlace.InRegion("intake"), Side.PORT).get(0));
        assertEquals(List.of(), spots(null, new SurveyPlace.InRegion("general"), null));
    }

    @Test
    void law_bothSidesAreMirrored() {
        List<Spot> both = spots(null, new SurveyPlace.InRegion("sheer"), Side.BOTH);
        assertEquals(2, both.size());
        assertEquals(both.get(0).point().getY(), -both.get(1).point().getY());
        assertEquals(both.get(0).point().getZ(), both.get(1).point().getZ());
    }

    /** Laid by girth, measured again by the hull's own. */
    @Test
    void law_girthThereAndBack() {
        Random lot = new Random(11);
        for (int i = 0; i < 200; i++) {
            double x = 0.1 + 5.8 * lot.nextDouble();
            double girth = 0.999 * lot.nextDouble();
            Spot spot = spots(new SurveyPlace.AftOfOrigin(x), new SurveyPlace.Girth(girth), Side.PORT).get(0);
            assertEquals(girth, HULL.girth(x, spot.point().getY()), 1e-9);
            assertEquals(girth, spot.girth(), 1e-9);
        }
    }

    @Test
    void saysWhatKeepsAFindingOffTheHull() {
        assertFault(PlaceFault.Part.ALONG, "is no station of the table; it has S0, S1, S2, S3, S4",
            lay(new SurveyPlace.AtStation("7"), new SurveyPlace.Girth(0.5), Side.PORT));
        assertFault(PlaceFault.Part.ALONG, "lies off the hull, which runs from x = 0.000 m to 6.000 m aft of station S0",
            lay(new SurveyPlace.AftOfOrigin(9), new SurveyPlace.Girth(0.5), Side.PORT));
        assertFault(PlaceFault.Part.OUT, "lies off the skin: at x = 2.000 m it is 1.500 m from keel line to sheer along the skin",
            lay(new SurveyPlace.AftOfOrigin(2), new SurveyPlace.Girth(1.6), Side.PORT));
        assertFault(PlaceFault.Part.OUT, "is no region of this boat; it has bottom, topsides, transom, stem, keel, chine, sheer, intake, general",
            lay(null, new SurveyPlace.InRegion("engine room"), null));
        assertFault(PlaceFault.Part.SIDE, "is not told of a place off the centreline; write port, starboard or both",
            lay(new SurveyPlace.AftOfOrigin(2), new SurveyPlace.Girth(0.5), null));
        assertFault(PlaceFault.Part.SIDE, "is not the side of that region; write port",
            lay(null, new SurveyPlace.InRegion("intake"), Side.STARBOARD));
        assertFault(PlaceFault.Part.SIDE, "is told of a region without sides; leave it out",
            lay(null, new SurveyPlace.InRegion("keel"), Side.PORT));
        assertFault(PlaceFault.Part.ALONG, "is told with a region that is meant as a whole; leave it out",
            lay(new SurveyPlace.AftOfOrigin(2), new SurveyPlace.InRegion("general"), null));
    }

    private static void assertFault(PlaceFault.Part part, String reason, HullSurvey survey) {
        assertEquals(List.of(new PlaceFault(0, part, reason)), survey.faults());
    }
}
