package org.garboard.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.garboard.craft.FeaturePlace;
import org.garboard.craft.FeaturePlace.Datum;
import org.garboard.craft.FeaturePlace.Measure;
import org.garboard.craft.Housing;
import org.garboard.craft.Sides;
import org.garboard.craft.SoundBeam;
import org.garboard.craft.TransducerDetails;
import org.garboard.handling.Support;
import org.garboard.handling.Supports;
import org.garboard.inside.Inside;
import org.garboard.inside.InsideDatum;
import org.garboard.inside.Room;
import org.garboard.inside.Seen;
import org.garboard.inside.Span;
import org.garboard.job.Particulars;
import org.garboard.skin.Layup;
import org.garboard.skin.PlankLine;
import org.garboard.skin.SkinMaterial;
import org.garboard.skin.SurveyedSkin;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

/** What a job need not tell: beams, skin, rooms, supports. */
class JobParticularsTest {
    private static final String DETAILS = """
        <stem-length unit="mm">110</stem-length>
        <housing>stainless-steel</housing>
        <weight unit="lb">4</weight>
        <sound>
        <beam><frequency unit="kHz">50</frequency><beam-width unit="deg">45</beam-width></beam>
        <beam><frequency unit="kHz">200.5</frequency><width-fore-and-aft unit="deg">8</width-fore-and-aft><width-athwart unit="deg">30</width-athwart></beam>
        </sound>
        """;
    private static final String AT = "<at><x unit=\"m\">5</x><y unit=\"m\">0.4</y></at>";
    private static final String SKIN = """
        <skin material="planked">
        <layup><whole unit="mm">32</whole></layup>
        <gauge>
        <reading side="port">AT<thickness unit="mm">31.5</thickness></reading>
        </gauge>
        <planking>
        <seam side="both"><at><x unit="m">2</x><y unit="m">0.3</y></at><at><x unit="m">7</x><girth unit="m">0.3</girth></at></seam>
        <butt side="starboard">AT AT</butt>
        <fastenings side="both">AT AT</fastenings>
        </planking>
        <measured><deadrise>AT<starboard unit="deg">18.5</starboard></deadrise></measured>
        </skin>
        """.replace("AT", AT);
    private static final String ROOMS = """
        <rooms>
        <transom-inside name="transom"><transom-thickness unit="mm">60</transom-thickness></transom-inside>
        <transfer-point name="drain"><ahead-of-after-end unit="m">0.4</ahead-of-after-end></transfer-point>
        <looked-at from="transom"><ahead-from unit="m">0</ahead-from><ahead-to unit="m">4</ahead-to></looked-at>
        <room kind="fuel-tank" name="main" from="drain" side="both">
        <ahead-from unit="m">1</ahead-from><ahead-to unit="m">2.5</ahead-to>
        <out-from unit="m">0</out-from><out-to unit="mm">400</out-to>
        <above-skin unit="mm">80</above-skin>
        </room>
        </rooms>
        """;
    private static final String SUPPORTS = """
        <supports>
        <support kind="bunk" name="bunks" side="both"><ahead-from unit="m">0</ahead-from><ahead-to unit="m">3</ahead-to>
        <out-from unit="m">0.5</out-from><out-to unit="m">0.6</out-to></support>
        <support kind="sling" name="aft" side="both"><ahead-from unit="m">1.5</ahead-from><ahead-to unit="m">1.7</ahead-to></support>
        </supports>
        """;

    private static String with(String details, String rest) {
        return SampleJob.with("  </transducer>", details + "  </transducer>").replace("  <pocket>", rest + "  <pocket>");
    }

    private static Particulars read(String text) {
        assertEquals(List.of(), SampleJob.messages(text));
        return ((JobReading.Read) SampleJob.read(text)).job().particulars();
    }

    @Test
    void oldJobsTellNothing() {
        assertEquals(Particulars.UNTOLD, SampleJob.job().particulars());
    }

    @Test
    void readsTheTransducer() {
        assertEquals(new TransducerDetails(List.of(
            new SoundBeam(50e3, Angle.ofDegrees(45), Angle.ofDegrees(45)), new SoundBeam(200500, Angle.ofDegrees(8), Angle.ofDegrees(30))),
            Optional.of(Housing.STAINLESS_STEEL), Optional.of(1.81436948), Optional.of(0.11)), read(with(DETAILS, "")).transducer());
        assertEquals(Optional.of(0.35), read(with("<weight unit=\"g\">350</weight>", "")).transducer().weight());
    }

    @Test
    void readsTheSkin() {
        FeaturePlace at = new FeaturePlace(Datum.AFT_OF_ORIGIN, 5, Measure.HALF_BREADTH, 0.4);
        assertEquals(Optional.of(new SurveyedSkin(SkinMaterial.PLANKED, Optional.of(new Layup.Whole(0.032)),
            List.of(new SurveyedSkin.Reading(Sides.PORT, at, 0.0315)),
            Optional.of(List.of(
                new SurveyedSkin.Line(PlankLine.Kind.SEAM, Sides.BOTH, List.of(new FeaturePlace(Datum.AFT_OF_ORIGIN, 2, Measure.HALF_BREADTH, 0.3),
                    new FeaturePlace(Datum.AFT_OF_ORIGIN, 7, Measure.GIRTH, 0.3))),
                new SurveyedSkin.Line(PlankLine.Kind.BUTT, Sides.STARBOARD, List.of(at, at)),
                new SurveyedSkin.Line(PlankLine.Kind.FASTENINGS, Sides.BOTH, List.of(at, at)))),
            List.of(new SurveyedSkin.Deadrise(at, Optional.of(Angle.ofDegrees(18.5)), Optional.empty())))), read(with("", SKIN)).skin());
    }

    @Test
    void readsALayupWithACore() {
        String cored = "<skin material=\"cored-glass\"><layup><outer-skin unit=\"mm\">5</outer-skin><core kind=\"balsa\" unit=\"mm\">20</core>"
            + "<inner-skin unit=\"mm\">3</inner-skin></layup></skin>";
        SurveyedSkin skin = read(with("", cored)).skin().orElseThrow();
        assertEquals(Optional.of(new Layup.Sandwich(0.005, Layup.Core.BALSA, 0.020, 0.003)), skin.layup());
        assertEquals(Optional.empty(), skin.planking());
    }

    @Test
    void everyWordOfTheSchemaIsKnown() {
        for (String material : List.of("solid-glass", "carbon", "planked", "plywood", "aluminium", "steel", "cored-glass")) {
            assertEquals(material.replace('-', '_').toUpperCase(java.util.Locale.ROOT),
                read(with("", "<skin material=\"" + material + "\"/>")).skin().orElseThrow().material().name());
        }
        for (String kind : List.of("fuel-tank", "fuel-line", "tank", "stringer", "bulkhead", "engine-bed", "engine", "floor")) {
            assertEquals(kind.replace('-', '_').toUpperCase(java.util.Locale.ROOT),
                read(with("", ROOMS.replace("fuel-tank", kind))).rooms().orElseThrow().rooms().get(0).kind().name());
        }
        for (String kind : List.of("bunk", "roller", "sling", "block", "beach")) {
            assertEquals(kind.toUpperCase(java.util.Locale.ROOT),
                read(with("", SUPPORTS.replace("\"bunk\"", "\"" + kind + "\""))).supports().orElseThrow().all().get(0).kind().name());
        }
        for (String housing : List.of("plastic", "bronze", "stainless-steel")) {
            assertEquals(housing.replace('-', '_').toUpperCase(java.util.Locale.ROOT),
                read(with("<housing>" + housing + "</housing>", "")).transducer().housing().orElseThrow().name());
        }
    }

    @Test
    void readsRoomsAndSupports() {
        Particulars told = read(with("", ROOMS + SUPPORTS));
        assertEquals(Optional.of(new Inside(
            List.of(new InsideDatum.Transom("transom", 0.06), new InsideDatum.TransferPoint("drain", 0.4)),
            List.of(new Room(Room.Kind.FUEL_TANK, "main", "drain", Sides.BOTH, new Span(1, 2.5), new Span(0, 0.4),
                new Span(0.08, Double.POSITIVE_INFINITY))),
            List.of(new Seen("transom", new Span(0, 4))))), told.rooms());
        assertEquals(Optional.of(new Supports(List.of(
            new Support(Support.Kind.BUNK, "bunks", Sides.BOTH, 0, 3, Optional.of(new Support.Out(0.5, 0.6))),
            new Support(Support.Kind.SLING, "aft", Sides.BOTH, 1.5, 1.7, Optional.empty())))), told.supports());
        assertEquals(Optional.of(new Supports(List.of())), read(with("", "<supports/>")).supports());
    }

    @Test
    void tellsWhatIsWrongWithBeams() {
        assertEquals(List.of("job.xml:17:43: <beam-width> is 0 deg; it must be more than 0 and less than 180 deg: the full width that the maker"
            + " tells, at half power"), SampleJob.messages(with(DETAILS.replace(">45<", ">0<"), "")));
        assertEquals(List.of("job.xml:17:7: <frequency> is 50000 kHz; it must be more than 0 and at most 5000 kHz"),
            SampleJob.messages(with(DETAILS.replace(">50<", ">50000<"), "")));
        assertEquals(List.of("job.xml:15:1: <weight> is 4000 lb; it must be more than 0 and at most 500 kg"),
            SampleJob.messages(with(DETAILS.replace(">4<", ">4000<"), "")));
        assertEquals(List.of("job.xml:17:1: <beam> lacks one of <beam-width>, <width-fore-and-aft>"),
            SampleJob.messages(with(DETAILS.replace("<beam-width unit=\"deg\">45</beam-width>", ""), "")));
    }

    @Test
    void tellsWhatIsWrongWithTheSkin() {
        assertEquals(List.of("job.xml:19:1: <layup> of cored-glass tells no core; write <outer-skin>, <core> and <inner-skin>"),
            SampleJob.messages(with("", SKIN.replace("planked", "cored-glass"))));
        assertEquals(List.of("job.xml:21:67: <thickness> is 0 mm; it must be more than 0 and at most 300 mm"),
            SampleJob.messages(with("", SKIN.replace("31.5", "0"))));
        assertEquals(List.of("job.xml:18:1: attribute material of <skin>: \"wood\" stands there; expected solid-glass, cored-glass, carbon, planked,"
            + " plywood, aluminium or steel"),
            SampleJob.messages(with("", SKIN.replace("\"planked\"", "\"wood\""))));
        assertEquals(List.of("job.xml:13:1: <stem-length> is 30 mm, and the skin 32.0 mm; a stem longer than the skin is needed for"
            + " <flush-through-hull>, or leave that mount away"),
            SampleJob.messages(with("<stem-length unit=\"mm\">30</stem-length>\n", SKIN)));
        assertEquals(List.of("job.xml:28:11: <deadrise> tells no angle; write <starboard> and <port>"),
            SampleJob.messages(with("", SKIN.replace("<starboard unit=\"deg\">18.5</starboard>", ""))));
    }

    @Test
    void tellsWhatIsWrongWithRooms() {
        assertEquals(List.of("job.xml:22:1: from=\"mast\" names nothing to measure from; expected transom or drain"),
            SampleJob.messages(with("", ROOMS.replace("from=\"drain\"", "from=\"mast\""))));
        assertEquals(List.of("job.xml:20:1: \"transom\" names something to measure from already; name each apart",
            "job.xml:22:1: from=\"drain\" names nothing to measure from; expected transom"),
            SampleJob.messages(with("", ROOMS.replace("point name=\"drain\"", "point name=\"transom\""))));
        assertEquals(List.of("job.xml:23:36: <ahead-to> is 0.5 m and <ahead-from> 1 m; the first must be more"),
            SampleJob.messages(with("", ROOMS.replace(">2.5<", ">0.5<"))));
        assertEquals(List.of("job.xml:24:32: <out-to> is 400 m; it must be from 0 to 10 m"),
            SampleJob.messages(with("", ROOMS.replace("mm\">400", "m\">400"))));
        assertEquals(List.of("job.xml:19:1: <transom-inside> lacks <transom-thickness>"),
            SampleJob.messages(with("", ROOMS.replace("<transom-thickness unit=\"mm\">60</transom-thickness>", ""))));
    }

    @Test
    void tellsWhatLiesOffTheHull() {
        String far = SKIN.replace("<reading side=\"port\"><at><x unit=\"m\">5", "<reading side=\"port\"><at><x unit=\"m\">50");
        assertEquals(List.of("gauge reading 1 is off the skin"), read(with("", far)).off(SampleHull.wedge()).stream()
            .filter(each -> each.startsWith("gauge")).toList());
        String lost = ROOMS.replace(">2.5<", ">99<").replace("<ahead-from unit=\"m\">1<", "<ahead-from unit=\"m\">98<");
        assertEquals(List.of("room \"main\", from 98.000 to 99.000 m ahead of \"drain\", lies outside the hull"), read(with("", lost)).off(SampleHull.wedge()));
        assertEquals(List.of(), read(with("", ROOMS)).off(SampleHull.wedge()));
    }
}
