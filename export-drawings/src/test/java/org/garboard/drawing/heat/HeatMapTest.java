package org.garboard.drawing.heat;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.LaidFeature;
import org.garboard.craft.Sides;
import org.garboard.craft.Transducer;
import org.garboard.geometry.Quad;
import org.garboard.geometry.Ring;
import org.garboard.hull.Hull;
import org.garboard.mount.FlushThroughHull;
import org.garboard.mount.Installation;
import org.garboard.mount.KeelPocket;
import org.garboard.mount.Mount;
import org.garboard.mount.PocketWish;
import org.garboard.mount.TransomMount;
import org.garboard.offsets.Entry;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.Measure;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.SkinSurface;
import org.garboard.offsets.Station;
import org.garboard.offsets.TableLine;
import org.garboard.siting.Mark;
import org.garboard.siting.MountSiting;
import org.garboard.siting.Region;
import org.garboard.siting.Siting;
import org.garboard.siting.SitingTask;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

/** On a wedge of 20 degrees, 6 m long and 1 m in half-breadth. */
class HeatMapTest {
    private static final double STEP = 0.02;
    private static final Hull WEDGE = wedge();
    private static final LaidFeature ANODE = new LaidFeature("anode", "anode", Sides.PORT, List.of(Quad.of(2, 0.4, 3, 0.4, 3, 0.6, 2, 0.6)),
        Optional.empty());

    private static Hull wedge() {
        double rise = Math.tan(Math.toRadians(20));
        return Hull.through(new OffsetTable("Wedge", SkinSurface.OUTSIDE_OF_SKIN, 0.001, IntStream.rangeClosed(0, 6).mapToObj(i -> new Station(Integer.toString(i), i)).toList(),
            List.of(line(LineKind.KEEL, Measure.HEIGHT, 0), line(LineKind.CHINE, Measure.HALF_BREADTH, 1), line(LineKind.CHINE, Measure.HEIGHT, rise),
                line(LineKind.SHEER, Measure.HALF_BREADTH, 1.2), line(LineKind.SHEER, Measure.HEIGHT, 1.2))));
    }

    private static TableLine line(LineKind kind, Measure measure, double value) {
        return new TableLine(kind, kind == LineKind.KEEL ? "Keel" : kind == LineKind.CHINE ? "Chine" : "Sheer", 0, measure,
            IntStream.rangeClosed(0, 6).mapToObj(i -> new Entry(i, value)).toList());
    }

    private static SitingTask task(List<LaidFeature> laid, Mount... mounts) {
        Transducer body = new Transducer("body", 0.12, 0.08, 0.03, 0, 0.02, Angle.ofDegrees(20));
        return new SitingTask(0.4, new Installation(body, new PocketWish(OptionalDouble.empty(), 0.005, 8)), List.of(mounts), Mark.FIVE_MILLIMETRES,
            new BottomFeatures(laid, BottomFeatures.FeatureList.GIVEN));
    }

    private static String draw(SitingTask task) {
        List<HeatPanel> panels = new ArrayList<>();
        for (MountSiting siting : Siting.search(WEDGE, task, STEP)) {
            panels.add(new HeatPanel("body: " + siting.mount().words(), Siting.map(WEDGE, task, siting.mount(), STEP), siting.sites()));
        }
        return new String(HeatMap.draw("Wedge & \"co\"", WEDGE, panels), StandardCharsets.UTF_8);
    }

    /** The heavy line bounds what the search found by itself: both sides together, to half a cell along the bound. */
    @Test
    void law_theHeavyLineBoundsTheRegionsOfTheSearch() {
        SitingTask task = task(List.of(ANODE), new FlushThroughHull());
        double found = Siting.search(WEDGE, task, STEP).get(0).regions().stream().mapToDouble(Region::area).sum();
        double scale = (297 - 2 * 12 - 8) / 6.0;
        double drawn = 0;
        Matcher path = Pattern.compile("<path d=\"([^\"]*)\" fill-rule=\"evenodd\" fill=\"none\" stroke=\"#000\" stroke-width=\"0.45\"/>").matcher(draw(task));
        while (path.find()) {
            double side = 0;
            for (String ring : path.group(1).split("Z")) {
                List<Vector2D> points = new ArrayList<>();
                for (String point : ring.substring(1).split("L")) {
                    String[] at = point.split(" ");
                    points.add(Vector2D.of(Double.parseDouble(at[0]), Double.parseDouble(at[1])));
                }
                side += new Ring(points).area();
            }
            // rings of the port side run the other way round
            drawn += Math.abs(side);
        }
        assertEquals(found, drawn / scale / scale, 0.01 * found);
    }

    @Test
    void tellsWhatGovernsWhereAndCanBeRead() throws Exception {
        String svg = draw(task(List.of(ANODE), new TransomMount(), new FlushThroughHull(), new KeelPocket()));
        assertTrue(svg.contains(" room to the keel line, over ") && svg.contains(" room to strakes and fittings, over "), svg);
        assertTrue(svg.contains("aria-label=\"body: keel pocket\""), svg);
        assertEquals("Wedge & \"co\": how well the bottom serves", DocumentBuilderFactory.newDefaultNSInstance().newDocumentBuilder()
            .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8))).getElementsByTagName("title").item(0).getTextContent());
    }

    @Test
    void law_theSameBytesAgain() {
        SitingTask task = task(List.of(ANODE), new FlushThroughHull(), new KeelPocket());
        assertArrayEquals(draw(task).getBytes(StandardCharsets.UTF_8), draw(task).getBytes(StandardCharsets.UTF_8));
    }
}
