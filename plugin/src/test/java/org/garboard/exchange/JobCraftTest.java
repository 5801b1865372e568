package org.garboard.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.garboard.craft.Craft;
import org.garboard.craft.Drive;
import org.garboard.craft.FeaturePlace.Datum;
import org.garboard.craft.HomeWater;
import org.garboard.craft.RunningSpeed;
import org.garboard.craft.SeaTrial;
import org.garboard.craft.ThrustLine;
import org.garboard.craft.TrimBand;
import org.garboard.craft.Weights;
import org.garboard.job.Job;
import org.garboard.job.SitingRecord;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

/** The craft of a job: what is read, what is filled in, what is refused. */
class JobCraftTest {
    private static final String CRAFT = """
        <craft>
        <drive kind="shaft" number="2" hand="counter-rotating"><propeller-diameter unit="mm">710</propeller-diameter>
        <thrust-line><above-transom-foot unit="mm">-420</above-transom-foot><inclination unit="deg">9</inclination></thrust-line></drive>
        <weights><light unit="kg">1500</light><full unit="lb">4000</full>
        <centre-of-gravity><ahead-of-after-end unit="m">2.5</ahead-of-after-end><above-base unit="m">0.6</above-base></centre-of-gravity></weights>
        <speeds>
        <speed name="cruise" unit="kn" share="75">24</speed>
        <speed name="troll" unit="kn" share="25">6.5</speed>
        </speeds>
        <water><temperature unit="C">18</temperature><salinity unit="g/kg">0</salinity></water>
        <trim-band><bow-down unit="deg">1</bow-down><bow-up unit="deg">2</bow-up></trim-band>
        <sea-trials>
        <sea-trial><at unit="kn">24</at><trim unit="deg">4</trim></sea-trial>
        <sea-trial><at unit="kn">20</at><wetted-keel unit="m">3</wetted-keel></sea-trial>
        </sea-trials>
        </craft>
        """;

    private static String with(String craft) {
        return SampleJob.with("  <pocket>", craft + "  <pocket>");
    }

    private static Craft read(String craft) {
        assertEquals(List.of(), SampleJob.messages(with(craft)));
        return ((JobReading.Read) SampleJob.read(with(craft))).job().particulars().craft().orElseThrow();
    }

    private static List<String> faults(String part, String replacement) {
        if (!CRAFT.contains(part)) {
            throw new IllegalArgumentException("the sample does not hold " + part);
        }
        return SampleJob.messages(with(CRAFT.replace(part, replacement)));
    }

    @Test
    void readsEveryValue() {
        assertEquals(new Craft(
            new Drive(Drive.Kind.SHAFT, 2, Optional.of(Drive.Hand.COUNTER_ROTATING), Optional.of(0.71),
                Optional.of(new ThrustLine(-0.42, Angle.ofDegrees(9)))),
            Optional.of(new Weights(1500, 1814.36948, Datum.AHEAD_OF_AFTER_END, 2.5, 0.6)),
            List.of(new RunningSpeed("troll", 6.5, Optional.of(0.25)), new RunningSpeed("cruise", 24, Optional.of(0.75))),
            new HomeWater(18, 0), new TrimBand(Angle.ofDegrees(1), Angle.ofDegrees(2)),
            List.of(new SeaTrial(20, Optional.empty(), Optional.of(3.0)), new SeaTrial(24, Optional.of(Angle.ofDegrees(4)), Optional.empty()))),
            read(CRAFT));
    }

    @Test
    void fillsInWhatMayBeLeftOut() {
        assertEquals(new Craft(new Drive(Drive.Kind.JET, 1, Optional.empty(), Optional.empty(), Optional.empty()), Optional.empty(),
            List.of(new RunningSpeed("top", 30, Optional.empty())), HomeWater.SEA, TrimBand.USUAL, List.of()),
            read("<craft><speeds><speed name=\"top\" unit=\"kn\">30</speed></speeds><drive kind=\"jet\" number=\"1\"/></craft>"));
        assertEquals(new HomeWater(10, HomeWater.SEA_SALINITY), read(CRAFT.replaceAll("<temperature.*</water>", "<temperature unit=\"C\">10</temperature></water>")).water());
    }

    @Test
    void everyWordOfTheSchemaIsKnown() {
        for (Drive.Kind kind : Drive.Kind.values()) {
            String word = kind.name().toLowerCase(Locale.ROOT);
            assertEquals(kind, read("<craft><speeds><speed name=\"top\" unit=\"kn\">30</speed></speeds><drive kind=\"" + word
                + "\" number=\"1\"/></craft>").drive().kind());
        }
        for (String hand : List.of("right", "left", "counter-rotating")) {
            assertEquals(hand, read(CRAFT.replace("hand=\"counter-rotating\"", "hand=\"" + hand + "\"")).drive().hand().orElseThrow().name()
                .toLowerCase(Locale.ROOT).replace('_', '-'));
        }
    }

    @Test
    void tellsWhatIsWrongWithSpeeds() {
        assertEquals(List.of("job.xml:24:1: <speed> is 0 kn; it must be more than 0 and at most 100 kn"), faults(">24</speed>", ">0</speed>"));
        assertEquals(List.of("job.xml:25:1: <speed> is -6.5 kn; it must be more than 0 and at most 100 kn"), faults(">6.5<", ">-6.5<"));
        assertEquals(List.of("job.xml:25:1: <speed> of 24.0 kn stands there already; write each speed once"), faults(">6.5<", ">24.0<"));
        assertEquals(List.of("job.xml:25:1: a speed named \"cruise\" stands in <speeds> already; name each apart"), faults("\"troll\"", "\"cruise\""));
        assertEquals(List.of("job.xml:23:1: the shares of the speeds are 90 per cent together; they must be 100"), faults("share=\"25\"", "share=\"15.0\""));
        assertEquals(List.of("job.xml:23:1: 1 of 2 speeds tell their share; tell it for every speed, or for none"), faults(" share=\"25\"", ""));
        assertEquals(List.of("job.xml:23:1: the shares of the speeds are 50 per cent together; they must be 100",
            "job.xml:25:1: share is -25 per cent; it must be from 0 to 100 per cent"), faults("share=\"25\"", "share=\"-25\""));
    }

    @Test
    void tellsWhatIsWrongWithWeights() {
        assertEquals(List.of("job.xml:21:10: <light> is 0 kg; it must be more than 0 and at most 1000000 kg"), faults(">1500<", ">0<"));
        assertEquals(List.of("job.xml:21:39: <full> is 3000 lb and <light> 1500 kg; full must not be less than light"), faults(">4000<", ">3000<"));
    }

    @Test
    void tellsWhatIsWrongWithDriveWaterAndBand() {
        assertEquals(List.of("job.xml:19:1: a jet has no propeller to turn: leave hand away, or write another kind of drive",
            "job.xml:19:54: a jet has no propeller: leave <propeller-diameter> away, or write another kind of drive"), faults("\"shaft\"", "\"jet\""));
        assertEquals(List.of("job.xml:19:56: <propeller-diameter> is 710 m; it must be more than 0 and at most 5 m"), faults("\"mm\">710", "\"m\">710"));
        assertEquals(List.of("job.xml:20:14: <above-transom-foot> is -420 m; it must be from -3 to 3 m"), faults("\"mm\">-420", "\"m\">-420"));
        assertEquals(List.of("job.xml:20:69: <inclination> is 90 deg; it must be from -20 to 20 deg"), faults(">9<", ">90<"));
        assertEquals(List.of("job.xml:27:8: <temperature> is 64 C; it must be from 0 to 40 C"), faults(">18<", ">64<"));
        assertEquals(List.of("job.xml:27:46: <salinity> is 350 g/kg; it must be from 0 to 42 g/kg"), faults("\"g/kg\">0", "\"g/kg\">350"));
        assertEquals(List.of("job.xml:28:12: <bow-down> is -1 deg; it must be from 0 to 5 deg"), faults("\"deg\">1<", "\"deg\">-1<"));
    }

    @Test
    void tellsWhatIsWrongWithSeaTrials() {
        assertEquals(List.of("job.xml:30:1: <sea-trial> tells nothing that was measured; write <trim>, <wetted-keel> or both"),
            faults("<trim unit=\"deg\">4</trim>", ""));
        assertEquals(List.of("job.xml:30:33: <trim> is 40 deg; it must be from -5 to 20 deg"), faults("\"deg\">4<", "\"deg\">40<"));
        assertEquals(List.of("job.xml:31:12: <at> of 24 kn stands there already; write each speed once"), faults("\"kn\">20<", "\"kn\">24<"));
        assertEquals(List.of("job.xml:31:33: <wetted-keel> is 0 m; it must be more than 0 and at most 100 m"), faults("\"m\">3<", "\"m\">0<"));
    }

    @Test
    void tellsWhatLiesOutsideTheBoat() {
        assertEquals(List.of(), onWedge(CRAFT));
        assertEquals(List.of("job.xml:21:39: <full> is 400000 lb; her sheer is under water with 18372 kg, so it must be less",
            "job.xml:22:20: <ahead-of-after-end> is 25 m, which is outside the boat; it must be from 0.000 to 8.000 m",
            "job.xml:22:72: <above-base> is 6 m, which is outside the boat; it must be from 0.000 to 1.200 m",
            "job.xml:31:33: <wetted-keel> is 30 m, which is outside the boat; it must be from 0.000 to 8.000 m"),
            onWedge(CRAFT.replace(">4000<", ">400000<").replace("\"m\">2.5<", "\"m\">25<").replace("\"m\">0.6<", "\"m\">6<").replace("\"m\">3<", "\"m\">30<")));
    }

    /** A draught is the height of the waterline; with a craft or without. */
    @Test
    void tellsOfAWaterlineThatMissesTheHull() {
        for (String craft : List.of(CRAFT, "")) {
            assertEquals(List.of("job.xml:5:3: <draught> is 1.9 m: a waterline so high above the base line does not cut the hull; it must lie between "
                + "0.000 m, the lowest of her keel line, and 1.200 m, the lowest of her sheer"),
                CraftOnHull.faults("job.xml", with(craft).replaceFirst("(<draught[^>]*>)[^<]*", "$11.9").getBytes(StandardCharsets.UTF_8), SampleHull.wedge())
                    .stream().map(FileFault::message).toList());
        }
    }

    @Test
    void theRecordCarriesIt() {
        SitingRecord bare = SampleRecord.refused();
        Job job = ((JobReading.Read) SampleJob.read(with(CRAFT))).job();
        byte[] record = RecordFile.write(List.of(new ToldDecision(
            new SitingRecord(job, bare.features(), bare.sitings(), bare.advised(), bare.pocket(), bare.refusal()), "no")), SampleRecord.SOURCE, SampleRecord.OUTPUTS);
        String text = new String(record, StandardCharsets.UTF_8);
        assertEquals("""
            <craft>
            <drive kind="shaft" number="2" hand="counter-rotating" propeller-diameter_mm="710.000" thrust-height_m="-0.420000" thrust-inclination_deg="9.00000" thrust="told"/>
            <weights light_kg="1500.000" full_kg="1814.369" x_m="5.500000" z_m="0.600000"/>
            <speed name="troll" speed_kn="6.500" share_percent="25.00"/>
            <speed name="cruise" speed_kn="24.000" share_percent="75.00"/>
            <water temperature_c="18.00" salinity_g_per_kg="0.0000"/>
            <trim-band bow-down_deg="1.00000" bow-up_deg="2.00000"/>
            <sea-trial speed_kn="20.000" wetted-keel_m="3.000000"/>
            <sea-trial speed_kn="24.000" trim_deg="4.00000"/>
            </craft>
            """, text.substring(text.indexOf("<craft>"), text.indexOf("</craft>") + 9).replaceAll("(?m)^ +", ""));
        assertTrue(RecordFile.outputs(record) instanceof RecordFile.Outputs.Listed);
    }

    private static List<String> onWedge(String craft) {
        return CraftOnHull.faults("job.xml", with(craft).getBytes(StandardCharsets.UTF_8), SampleHull.wedge()).stream().map(FileFault::message).toList();
    }
}
