package org.garboard.exchange;

import static org.garboard.exchange.SampleJob.faults;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.garboard.craft.Transducer;
import org.garboard.hull.Fit;
import org.garboard.job.DrawingWish;
import org.garboard.job.Issue;
import org.garboard.job.Job;
import org.garboard.job.Particulars;
import org.garboard.mount.FlushThroughHull;
import org.garboard.mount.KeelPocket;
import org.garboard.mount.Mount;
import org.garboard.mount.LimitName;
import org.garboard.mount.PocketWish;
import org.garboard.mount.pocket.Blend;
import org.garboard.mount.pocket.Floor;
import org.garboard.mount.pocket.FormerWish;
import org.garboard.mount.pocket.PocketLayup;
import org.garboard.mount.pocket.PocketMake;
import org.garboard.mount.pocket.Walls;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JobFileTest {

    @Test
    void readsEveryValueOfASoundJob() {
        Job expected = new Job("Test boat", "T-1", "offsets.csv", Fit.WITHIN_ROUNDING, 0.58,
            new Transducer("Test body", 0.3, 0.15, 0.042, 0.03, 0.032, Angle.ofDegrees(0)),
            List.of(new FlushThroughHull(), new KeelPocket()), Optional.empty(),
            new PocketWish(OptionalDouble.of(0.0508), 0.003, 12),
            new DrawingWish(DrawingWish.Units.MILLIMETRES, DrawingWish.Paper.A2, DrawingWish.Orientation.LANDSCAPE, DrawingWish.Projection.FIRST_ANGLE,
                "OB39-TD-01", "Demonstration yard", "Loft", "Surveyor", "2026-03-14", "A"), Particulars.UNTOLD);
        assertEquals(expected, SampleJob.job());
    }

    @ParameterizedTest
    @CsvSource({"mm,580", "cm,58", "m,0.58", "in,22.834645669291339", "ft,1.902887139107612"})
    void readsADraughtInAnyUnit(String unit, String number) {
        JobReading reading = SampleJob.read(SampleJob.with("unit=\"m\">0.58", "unit=\"" + unit + "\">" + number));
        assertEquals(0.58, ((JobReading.Read) reading).job().draught(), 1e-15);
    }

    @Test
    void readsHowTheHullIsDrawn() {
        String exact = SampleJob.with("file=\"offsets.csv\"", "file=\"offsets.csv\" fit=\"exact\"");
        assertEquals(Fit.EXACT, ((JobReading.Read) SampleJob.read(exact)).job().fit());
        JobReading.Faulty wrong = (JobReading.Faulty) SampleJob.read(exact.replace("\"exact\"", "\"exactly\""));
        assertEquals(1, wrong.faults().size());
        assertTrue(wrong.faults().get(0).toString().contains("exactly"), wrong.faults().toString());
    }

    @Test
    void fillsInWhatMayBeLeftOut() {
        String text = SampleJob.text()
            .replaceAll("(?s)<pocket>.*</pocket>", "")
            .replace("<approver>Surveyor</approver>", "")
            .replace(" hull-number=\"T-1\"", "");
        Job job = ((JobReading.Read) SampleJob.read(text)).job();
        assertEquals(new PocketWish(OptionalDouble.empty(), 0.0025, 8), job.pocket());
        assertEquals("", job.drawing().approver());
        assertEquals("", job.hullNumber());
    }

    private static final String FIRST = "<issue mark=\"A\" date=\"2026-02-01\" by=\"Loft\">First issue</issue>";
    private static final String SECOND = "<issue mark=\"B\" date=\"2026-03-14\" by=\"Loft\">Moved 120 mm aft</issue>";

    @Test
    void readsTheTableOfRevisions() {
        String text = SampleJob.with("<revision>A</revision>", "<revision>B</revision><revisions>" + FIRST + SECOND + "</revisions>");
        assertEquals(List.of(new Issue("A", "2026-02-01", "Loft", "First issue"), new Issue("B", "2026-03-14", "Loft", "Moved 120 mm aft")),
            ((JobReading.Read) SampleJob.read(text)).job().drawing().issues());
        List<String> other = SampleJob.faults("<revision>A</revision>", "<revision>A</revision><revisions>" + FIRST + "</revisions>");
        assertEquals(1, other.size());
        assertTrue(other.get(0).endsWith("the last of <revisions> is \"A\" of 2026-02-01; expected the drawing's own, \"A\" of 2026-03-14: add an issue for it, or mend "
            + "<revision> and <date>"), other.toString());
        List<String> twice = SampleJob.faults("<revision>A</revision>", "<revision>B</revision><revisions>" + SECOND + FIRST + SECOND + "</revisions>");
        assertEquals(2, twice.size());
        assertTrue(twice.get(0).endsWith("issue of 2026-02-01 stands after that of 2026-03-14; list the first issue first"), twice.toString());
        assertTrue(twice.get(1).endsWith("revision \"B\" stands in <revisions> already; give each issue a mark of its own"), twice.toString());
    }

    @Test
    void readsHowAPocketIsMade() {
        String text = SampleJob.text().replaceAll("(?s)<pocket>.*</pocket>", "<pocket><into>new-mold</into><draft-angle unit=\"deg\">6</draft-angle>"
            + "<edge-radius unit=\"mm\">8</edge-radius><rebate><width unit=\"mm\">12</width><depth unit=\"mm\">9</depth><screws><hole unit=\"mm\">4</hole><apart unit=\"mm\">60</apart></screws></rebate>"
            + "<aside unit=\"mm\" side=\"port\">420</aside><floor>square-to-skin</floor>"
            + "<trailing-edge-lower unit=\"deg\">1</trailing-edge-lower><laminate><gelcoat unit=\"mm\">0.5</gelcoat>"
            + "<layer name=\"mat\"><thickness unit=\"mm\">4</thickness></layer></laminate>"
            + "<former><mold>split-on-centreline</mold><shrinkage-percent>0.3</shrinkage-percent></former>"
            + "<structure-approved-by>A. Surveyor</structure-approved-by></pocket>");
        PocketWish wish = ((JobReading.Read) SampleJob.read(text)).job().pocket();
        assertEquals(-0.42, wish.aside(), 1e-12);
        assertEquals(new PocketMake(new Walls(Angle.ofDegrees(6), 0.010, 0.008, Optional.of(new Walls.Rebate(0.012, 0.009, Optional.of(new Walls.Screws(0.004, 0.060))))), Blend.USUAL,
            new Floor(Floor.Lies.SQUARE_TO_SKIN, Angle.ofDegrees(1)), PocketMake.Into.NEW_MOLD,
            new PocketLayup(0.0005, List.of(new PocketLayup.Layer("mat", 0.004)), 12, 0.003),
            new FormerWish(FormerWish.Mold.SPLIT_ON_CENTRELINE, Angle.ofDegrees(0), 0.003, 0), "A. Surveyor", 1e-4), wish.make());
    }

    @Test
    void readsElementsInAnyOrder() {
        String draught = "  <draught unit=\"m\">0.58</draught>\n";
        String moved = SampleJob.with(draught, "").replace("</job>", draught + "</job>");
        assertEquals(SampleJob.read(SampleJob.text()), SampleJob.read(moved));
    }

    @Test
    void readsWindowsLineEndsAndAByteOrderMark() {
        String text = "\uFEFF" + SampleJob.text().replace("\n", "\r\n");
        assertEquals(SampleJob.read(SampleJob.text()), SampleJob.read(text));
        assertEquals(List.of("job.xml:5:3: <draught>: \"0,58\" is not a number; write a decimal point: 0.58"),
            SampleJob.messages(text.replace("0.58", "0,58")));
    }

    @Test
    void tellsAllFaultsInOneGoInTheOrderOfTheFile() {
        String text = SampleJob.text()
            .replace("0.58", "0,58")
            .replace("corner-radius", "corner-radios")
            .replace("<height unit=\"mm\">42", "<height unit=\"m\">42")
            .replace("<paper>A2", "<paper>A5")
            .replace("<revision>A</revision>", "");
        assertEquals(List.of(
            "job.xml:5:3: <draught>: \"0,58\" is not a number; write a decimal point: 0.58",
            "job.xml:9:5: <height> is 42 m; it must be more than 0 and at most 2 m",
            "job.xml:10:5: <corner-radios> is not expected in <transducer>; did you mean <corner-radius>?",
            "job.xml:23:3: <drawing> lacks <revision>",
            "job.xml:25:5: <paper>: \"A5\" stands there; expected A4, A3, A2, A1, ANSI-A, ANSI-B, ANSI-C or ANSI-D; did you mean A4?"),
            SampleJob.messages(text));
    }

    @Test
    void tellsFaultsInPlainWordsOnAnyLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertEquals(List.of("job.xml:2:1: <job> lacks <draught>"), faults("  <draught unit=\"m\">0.58</draught>\n", ""));
            assertEquals(List.of("job.xml:20:26: this is not well-formed XML: The entity \"nbsp\" was referenced, but not declared."),
                faults("unit=\"mm\">3<", "unit=\"mm\">&nbsp;<"));
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void ordersMountsByPreference() {
        String three = SampleJob.with("<flush-through-hull/>", "<in-hull/>\n    <flush-through-hull/>\n    <through-hull-with-fairing-block/>");
        assertEquals(List.of("in-hull", "flush-through-hull", "through-hull-with-fairing-block", "keel-pocket"), mounts(three));
        assertEquals(List.of("keel-pocket", "through-hull-with-fairing-block", "flush-through-hull", "in-hull"),
            mounts(three.replace("<mounts>", "<mounts preference=\"strongest-signal\">")));
        String turned = SampleJob.with("<flush-through-hull/>\n    <keel-pocket/>", "<keel-pocket/>\n    <flush-through-hull/>");
        assertEquals(List.of("keel-pocket", "flush-through-hull"), mounts(turned.replace("<mounts>", "<mounts preference=\"as-listed\">")));
        JobReading.Faulty refused = (JobReading.Faulty) SampleJob.read(turned);
        assertEquals(List.of("job.xml:14:3: <mounts> lists keel-pocket, flush-through-hull without saying which is preferred; write"
            + " preference=\"as-listed\" to prefer the first, or list flush-through-hull, keel-pocket, the least invasive first"),
            refused.faults().stream().map(FileFault::message).toList());
    }

    private static List<String> mounts(String job) {
        return ((JobReading.Read) SampleJob.read(job)).job().mounts().stream().map(Mount::word).toList();
    }

    @Test
    void readsLimitsAndRefusesOnesThatCannotBe() {
        String limits = "  <limits>\n    <limit of=\"flatness\" unit=\"mm\">4</limit>\n    <limit of=\"lean\" unit=\"deg\">6</limit>\n  </limits>\n  <drawing>";
        Job job = ((JobReading.Read) SampleJob.read(SampleJob.with("  <drawing>", limits))).job();
        assertEquals(0.004, job.particulars().limits().of(LimitName.FLATNESS).value(), 1e-15);
        assertEquals("from the job; the program's own would be 4.0 deg, " + LimitName.LEAN.own().source(),
            job.particulars().limits().of(LimitName.LEAN).source());
        JobReading.Faulty faulty = (JobReading.Faulty) SampleJob.read(SampleJob.with("  <drawing>", limits.replace("unit=\"mm\">4", "unit=\"deg\">4")
            .replace("unit=\"deg\">6", "unit=\"deg\">0")));
        assertEquals(List.of("the limit of flatness is in deg; it is measured in mm",
            "the limit of lean is 0 deg; it must be more than 0 and at most 100000; the program's own is 4.0 deg"),
            faulty.faults().stream().map(fault -> fault.message().replaceFirst("job.xml:\\d+:\\d+: ", "")).toList());
    }

    /** Each limit of the program has its word in the schema, and no other stands there. */
    @Test
    void everyLimitHasItsWord() {
        assertEquals(Stream.of(org.garboard.exchange.xml.job.LimitName.values()).map(org.garboard.exchange.xml.job.LimitName::value).toList(),
            Stream.of(LimitName.values()).map(LimitName::word).toList());
    }

    @Test
    void tellsWhatIsWrongWithElements() {
        assertEquals(List.of("job.xml:16:5: <transom> is not expected in <mounts>; expected there: <transom-mount>, <in-hull>, <flush-through-hull>,"
                + " <through-hull-with-fairing-block>, <keel-pocket>"),
            faults("<keel-pocket/>", "<transom/>"));
        assertEquals(List.of("job.xml:18:3: <pocket> belongs to another name space than <job>; leave its xmlns away"),
            faults("<pocket>", "<pocket xmlns=\"\">"));
        assertEquals(List.of("job.xml:5:35: <draught> stands again in <job>; it may stand there once"),
            faults("</draught>", "</draught><draught unit=\"m\">0.58</draught>"));
        assertEquals(List.of("job.xml:16:5: this mount stands in <mounts> already; each may stand there once"),
            faults("<keel-pocket/>", "<flush-through-hull/>"));
        assertEquals(List.of("job.xml:14:3: <mounts> lacks one of <transom-mount>, <in-hull>, <flush-through-hull>,"
                + " <through-hull-with-fairing-block>, <keel-pocket>"),
            faults("    <flush-through-hull/>\n    <keel-pocket/>\n", ""));
        assertEquals(List.of("job.xml:16:5: <keel-pocket> stays empty; write <keel-pocket/>"),
            faults("<keel-pocket/>", "<keel-pocket>deep</keel-pocket>"));
        assertEquals(List.of("job.xml:23:3: <drawing> lacks <date>, <revision>"),
            faults("    <approver>Surveyor</approver>\n    <date>2026-03-14</date>\n    <revision>A</revision>\n", ""));
        assertEquals(List.of("job.xml:23:3: text stands in <drawing>, where only elements may stand"),
            faults("<owner>", "by <owner>"));
    }

    @Test
    void tellsWhatIsWrongWithAttributes() {
        assertEquals(List.of("job.xml:5:3: <draught> lacks its attribute unit; write <draught unit=\"…\">"),
            faults(" unit=\"m\">0.58", ">0.58"));
        assertEquals(List.of("job.xml:5:3: attribute unit of <draught>: \"M\" stands there; expected mm, cm, m, in or ft; did you mean m?"),
            faults("unit=\"m\">0.58", "unit=\"M\">0.58"));
        assertEquals(List.of("job.xml:3:3: attribute nme is not known on <boat>",
            "job.xml:3:3: <boat> lacks its attribute name; write <boat name=\"…\">"),
            faults("boat name=", "boat nme="));
        assertEquals(List.of("job.xml:28:5: <owner> takes no attributes"), faults("<owner>", "<owner of=\"us\">"));
    }

    /** A number of a million digits, were it taken for one. */
    @Test
    void takesNoExponentForANumber() {
        assertEquals(List.of("job.xml:5:3: <draught>: \"1e1000000\" is not a number; write decimals with a point, such as 12.5, and the unit in the attribute unit"),
            faults("0.58", "1e1000000"));
        assertEquals(List.of("job.xml:5:3: a number of more than 64 digits stands in <draught>; no job file needs that"),
            faults("0.58", "0." + "3".repeat(63)));
        assertEquals(List.of(), faults("0.58", "0.58" + "0".repeat(60)));
    }

    @Test
    void tellsWhatIsWrongWithValues() {
        assertEquals(List.of("job.xml:5:3: <draught>: \"1-10-7\" is not a number; write decimals: the length 2-3-4 is 27.5 with unit=\"in\""),
            faults("0.58", "1-10-7"));
        assertEquals(List.of("job.xml:5:3: <draught>: elements stand there, where only a number may stand"),
            faults("0.58", "<b>0.58</b>"));
        assertEquals(List.of("job.xml:31:5: <date>: \"14.3.2026\" is not a date; write year-month-day, such as 2026-03-14"),
            faults("2026-03-14", "14.3.2026"));
        assertEquals(List.of("job.xml:31:5: <date>: \"2026-02-30\" is not a date; write year-month-day, such as 2026-03-14"),
            faults("2026-03-14", "2026-02-30"));
        assertEquals(List.of("job.xml:32:5: <revision>: nothing stands there; expected some text"),
            faults("<revision>A", "<revision>"));
        assertEquals(List.of("job.xml:27:5: <number>: \"OB39-TD-0123456789\" has 18 characters; at most 16 may stand there"),
            faults("OB39-TD-01", "OB39-TD-0123456789"));
    }

    @Test
    void holdsValuesToTheirRanges() {
        assertEquals(List.of("job.xml:5:3: <draught> is 0 m; it must be more than 0 and at most 10 m"), faults("0.58", "0"));
        assertEquals(List.of("job.xml:5:3: <draught> is 580 m; it must be more than 0 and at most 10 m"), faults("0.58", "580"));
        assertEquals(List.of("job.xml:10:5: <corner-radius> is 75.1 mm; it must be from 0 to half the shorter of length and width, 75 mm"),
            faults(">30<", ">75.1<"));
        assertEquals(List.of("job.xml:11:5: <stem-diameter> is -1 mm; it must be from 0 to the width, 150 mm"), faults(">32<", ">-1<"));
        assertEquals(List.of("job.xml:12:5: <element-inclination> is 46 deg; it must be from 0 to 45 deg"), faults("deg\">0", "deg\">46"));
        assertEquals(List.of("job.xml:19:5: <depth> is 2 m; it must be more than 0 and at most 1 m"), faults("in\">2", "m\">2"));
        assertEquals(List.of("job.xml:20:5: <gap> is 51 mm; it must be from 0 to 50 mm"), faults(">3<", ">51<"));
        assertEquals(List.of("job.xml:18:3: <ramp-ratio> is 0.5; write the ramp's length to its height, from 1 to 100 (8 for 1:8), or 0 for no ramps"),
            faults(">12<", ">0.5<"));
    }

    @Test
    void acceptsTheEndsOfItsRanges() {
        assertEquals(List.of(), faults(">30<", ">75<"));
        assertEquals(List.of(), faults(">30<", ">0<"));
        assertEquals(List.of(), faults(">12<", ">0<"));
        assertEquals(List.of(), faults(">12<", ">100<"));
        assertEquals(List.of(), faults("unit=\"mm\">150</width>\n    <height unit=\"mm\">42</height>\n    <corner-radius unit=\"mm\">30",
            "unit=\"in\">2.3</width>\n    <height unit=\"mm\">42</height>\n    <corner-radius unit=\"in\">1.15"));
    }

    @Test
    void keepsTheTableBelowTheFolderOfTheJob() {
        String remedy = "; name a file in the folder of the job or below it, such as offsets.csv, or give --allow-elsewhere";
        assertEquals(List.of("job.xml:4:3: table file \"a/../../offsets.csv\" leaves the folder of the job" + remedy),
            faults("offsets.csv", "a/../../offsets.csv"));
        assertEquals(List.of("job.xml:4:3: table file \"/offsets.csv\" is an absolute path" + remedy), faults("offsets.csv", "/offsets.csv"));
        assertEquals(List.of("job.xml:4:3: table file \"C:/offsets.csv\" is an absolute path" + remedy), faults("offsets.csv", "C:/offsets.csv"));
        assertEquals(List.of("job.xml:4:3: table file \"a\\offsets.csv\" has a backslash; part folders with /"),
            faults("offsets.csv", "a\\offsets.csv"));
        assertEquals(List.of(), faults("offsets.csv", "tables/..5.csv"));
    }

    @Test
    void refusesOtherVersionsAndOtherFiles() {
        assertEquals(List.of("job.xml:2:1: version \"2\" of the job file is not known to this program, which reads version \"1\"; "
            + "write version=\"1\" and bring the elements in line with garboard-job.xsd, or use the program that the file was written for"),
            faults("job\" version=\"1\"", "job\" version=\"2\""));
        assertEquals(List.of("job.xml:2:1: <job> does not say its version; write <job xmlns=\"urn:garboard:job\" version=\"1\">"),
            faults("job\" version=\"1\"", "job\""));
        assertEquals(List.of("job.xml:2:1: <job> has no name space; write <job xmlns=\"urn:garboard:job\" version=\"1\">"),
            faults(" xmlns=\"urn:garboard:job\"", ""));
        assertEquals(List.of("job.xml:1:1: this is a <svg> file; expected <job xmlns=\"urn:garboard:job\" version=\"1\">"),
            SampleJob.messages("<svg/>"));
    }

    @Test
    void readsNoDocumentTypeAndNoEntities() {
        assertEquals(List.of("job.xml:2:10: a DOCTYPE stands there; leave it away, job files have none and none is read"),
            faults("<job", "<!DOCTYPE job [<!ENTITY a SYSTEM \"file:///etc/hostname\">]>\n<job"));
    }

    @Test
    void refusesFilesThatAreTooLargeOrTooDeep() {
        assertEquals(List.of("job.xml:1:1: the file has more than 1048576 bytes; no job file needs that"),
            SampleJob.messages(SampleJob.text() + " ".repeat(1 << 20)));
        assertTrue(SampleJob.messages(SampleJob.with("<drawing>", "<a>".repeat(5000) + "<drawing>")).contains(
            "job.xml:23:96: elements stand more than 32 deep in each other; no job file needs that"));
    }

    @Test
    void refusesTextThatIsNotUtf8() {
        byte[] bytes = SampleJob.text().getBytes(StandardCharsets.UTF_8);
        bytes[SampleJob.text().indexOf("Test boat")] = (byte) 0xE4;
        assertEquals(new JobReading.Faulty(List.of(new FileFault("job.xml", 3, 15, "byte E4 is no UTF-8 text; save the file as UTF-8"))),
            JobFile.read("job.xml", bytes, TablePlace.BELOW_JOB));
        assertEquals(List.of("job.xml:1:31: encoding \"ISO-8859-1\" is not read; save the file as UTF-8 and write encoding=\"UTF-8\""),
            faults("UTF-8", "ISO-8859-1"));
    }

    @Test
    void tellsABrokenFileWhereItBreaks() {
        assertEquals(List.of("job.xml:35:1: this is not well-formed XML: XML document structures must start and end within the same entity."),
            faults("</job>", ""));
        assertEquals(List.of("job.xml:1:1: this is not well-formed XML: Premature end of file."), SampleJob.messages(""));
    }
}
