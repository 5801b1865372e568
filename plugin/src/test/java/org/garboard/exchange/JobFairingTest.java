package org.garboard.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.garboard.cutout.fairing.FairingWish;
import org.garboard.cutout.fairing.Planform;
import org.garboard.cutout.part.ThroughHullWish;
import org.garboard.cutout.transom.BracketTold;
import org.garboard.cutout.transom.BracketWish.Screw;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

/** What a job asks of ways through the skin and of a fairing block. */
class JobFairingTest {

    private static String with(String elements) {
        return SampleJob.with("<drawing>", elements + "<drawing>");
    }

    private static FairingWish wish(String elements) {
        return ((JobReading.Read) SampleJob.read(with(elements))).job().particulars().fairing();
    }

    @Test
    void readsEveryValue() {
        assertEquals(new FairingWish(Planform.HALF_ELLIPSES, 4.5, OptionalDouble.of(0.055), Angle.ofDegrees(0.5), Angle.ofDegrees(0),
                new ThroughHullWish(Optional.empty(), 0.003, ThroughHullWish.OVERLAP, ThroughHullWish.BLOCK, OptionalDouble.empty(), 5e-5)),
            wish("<through-hull><bedding unit=\"mm\">3</bedding><chord-error unit=\"mm\">0.05</chord-error></through-hull>"
                + "<fairing><planform>half-ellipses</planform><slenderness>4.5</slenderness><face-height unit=\"cm\">5.5</face-height>"
                + "<trailing-edge-lower unit=\"deg\">0.5</trailing-edge-lower></fairing>"));
    }

    @Test
    void fillsInWhatMayBeLeftOut() {
        FairingWish defaults = FairingWish.of(ThroughHullWish.of(Optional.empty()));
        assertEquals(defaults, wish(""));
        assertEquals(defaults, wish("<through-hull/><fairing/>"));
        assertEquals(defaults, wish("<fairing><planform>naca-00xx</planform></fairing>"));
    }

    @Test
    void readsTheScrewsOfABracket() {
        BracketTold told = ((JobReading.Read) SampleJob.read(with("<transom-bracket><face-below unit=\"mm\">6</face-below>"
            + "<screw side=\"both\"><off-middle unit=\"mm\">25</off-middle><above-face unit=\"mm\">90</above-face><diameter unit=\"mm\">4</diameter></screw>"
            + "<screw side=\"both\"><off-middle unit=\"mm\">0</off-middle><above-face unit=\"cm\">12</above-face><diameter unit=\"mm\">3</diameter></screw>"
            + "</transom-bracket>"))).job().particulars().bracket();
        assertEquals(new BracketTold(OptionalDouble.of(0.006), List.of(new Screw(-0.025, 0.09, 0.004), new Screw(0.025, 0.09, 0.004),
            new Screw(0, 0.12, 0.003))), told);
        assertEquals(BracketTold.NOTHING, ((JobReading.Read) SampleJob.read(with(""))).job().particulars().bracket());
    }

    @Test
    void tellsEveryScrewOutOfRange() {
        List<String> faults = SampleJob.messages(with("<transom-bracket><face-below unit=\"mm\">60</face-below>"
            + "<screw side=\"port\"><off-middle unit=\"m\">2</off-middle><above-face unit=\"mm\">0</above-face><diameter unit=\"mm\">60</diameter></screw>"
            + "</transom-bracket>"));
        assertEquals(List.of("<face-below> is 60 mm; it must be from 0 to 50 mm", "<off-middle> is 2 m; it must be from 0 to 1 m",
            "<above-face> is 0 mm; it must be more than 0 and at most 1 m", "<diameter> is 60 mm; it must be more than 0 and at most 50 mm"),
            faults.stream().map(fault -> fault.replaceFirst("^job\\.xml:[0-9]+:[0-9]+: ", "")).toList());
    }

    @Test
    void tellsEveryValueOutOfRange() {
        List<String> faults = SampleJob.messages(with("\n<through-hull><bedding unit=\"mm\">60</bedding><chord-error unit=\"mm\">0</chord-error></through-hull>"
            + "\n<fairing><slenderness>1.5</slenderness><face-height unit=\"m\">2</face-height>"
            + "<trailing-edge-lower unit=\"deg\">3</trailing-edge-lower></fairing>\n"));
        assertEquals(List.of(
            "<bedding> is 60 mm; it must be from 0 to 50 mm",
            "<chord-error> is 0 mm; it must be more than 0 and at most 1 m",
            "<slenderness> is 1.5; write the block's length to its width, from 2 to 8",
            "<face-height> is 2 m; it must be more than 0 and at most 1 m",
            "<trailing-edge-lower> is 3 deg; it must be from 0 to 2 deg"),
            faults.stream().map(fault -> fault.replaceFirst("^job\\.xml:[0-9]+:[0-9]+: ", "")).toList());
    }
}
