package org.garboard.mount;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class DemandTest {
    private static Demand most(double reading) {
        return Demand.atMost("gap", Limit.ofMillimetres(3, "test"), bed -> reading, "Good.", "Bad.");
    }

    private static Demand least(double reading) {
        return Demand.atLeast("room", Limit.ofMillimetres(50, "test"), bed -> reading, "Good.", "Bad.");
    }

    @Test
    void exact_mostIsDemandOverLimit() {
        Check check = most(0.0015).check(null);
        assertEquals(0.5, check.utilisation(), 1e-12);
        assertEquals(1.5, check.demand(), 1e-12);
        assertEquals(3, check.limit(), 1e-12);
        assertEquals("mm", check.unit());
        assertEquals(Verdict.MET, check.verdict());
        assertEquals("Good.", check.sentence());
        assertEquals(-0.5, most(0.0015).shortfall(null), 1e-12);
    }

    @Test
    void exact_leastIsRequiredOverAvailable() {
        Check check = least(0.040).check(null);
        assertEquals(1.25, check.utilisation(), 1e-12);
        assertEquals(40, check.demand(), 1e-12);
        assertEquals(Verdict.NOT_MET, check.verdict());
        assertEquals("Bad.", check.sentence());
        assertEquals(0.2, least(0.040).shortfall(null), 1e-12);
    }

    @Test
    void exact_signedDemandCountsByItsSize() {
        Demand lean = Demand.atMost("lean", Limit.ofDegrees(4, "test"), bed -> Math.toRadians(-5), "Good.", "Bad.");
        assertEquals(1.25, lean.utilisation(null), 1e-12);
        assertEquals(5, lean.check(null).demand(), 1e-12);
        assertEquals("deg", lean.check(null).unit());
        assertEquals(Verdict.NOT_MET, lean.check(null).verdict());
    }

    @Test
    void exact_onTheLimitIsMet() {
        assertEquals(Verdict.MET, most(0.003).check(null).verdict());
        assertEquals(Verdict.MET, least(0.050).check(null).verdict());
    }

    @Test
    void exact_noRoomAtAllIsInfinite() {
        assertEquals(Double.POSITIVE_INFINITY, least(0).check(null).utilisation());
        Check across = least(-0.020).check(null);
        assertEquals(Double.POSITIVE_INFINITY, across.utilisation());
        assertEquals(-20, across.demand(), 1e-12);
        assertEquals(Verdict.NOT_MET, across.verdict());
    }

    @Test
    void exact_nothingToKeepClearOfIsMet() {
        Check check = least(Double.POSITIVE_INFINITY).check(null);
        assertEquals(0, check.utilisation());
        assertEquals(Verdict.MET, check.verdict());
        assertTrue(Double.isNaN(check.demand()));
    }

    @Test
    void law_whatCannotBeReadIsNotKnownAndNotMet() {
        for (Demand demand : new Demand[] {most(Double.NaN), least(Double.NaN)}) {
            assertEquals(Verdict.NOT_KNOWN, demand.check(null).verdict());
            assertTrue(Double.isNaN(demand.check(null).utilisation()));
        }
    }

    /** What is known in part refuses by that part, and is otherwise not known; a site may be there. */
    @Test
    void law_aKnownPartRefusesAndNeverPasses() {
        for (double mm : new double[] {2, 3, 4}) {
            Demand part = most(mm / 1000).leavingOut(bed -> "The other end is not known.");
            boolean kept = mm <= 3;
            assertEquals(kept ? Verdict.NOT_KNOWN : Verdict.NOT_MET, part.check(null).verdict());
            assertEquals(kept, Double.isNaN(part.utilisation(null)));
            assertEquals(kept, part.allows(null));
            assertEquals(mm / 3 - 1, part.shortfall(null), 1e-12);
        }
        assertEquals("The other end is not known. As far as it is known: Good.", most(0.002).leavingOut(bed -> "The other end is not known.").check(null).sentence());
        assertEquals(Verdict.MET, most(0.002).leavingOut(bed -> "").check(null).verdict());
    }

    /** Met exactly where the shortfall is not above zero: regions and checks may not disagree. */
    @Test
    void law_shortfallAndUtilisationAgree() {
        for (int mm = -100; mm <= 200; mm++) {
            assertEquals(most(mm / 1e4).utilisation(null) <= 1, most(mm / 1e4).shortfall(null) <= 0);
            assertEquals(least(mm / 1e3).utilisation(null) <= 1, least(mm / 1e3).shortfall(null) <= 0);
        }
    }

    @Test
    void badInput_aDemandNeedsALimit() {
        assertThrows(IllegalArgumentException.class, () -> new Demand("x", Check.Sense.YES_NO,
            Limit.ofMillimetres(1, "test"), bed -> 0, "", "", Demand.Unread.RULES_OUT, bed -> "", bed -> "", OptionalDouble.empty(), Demand.Reads.BED));
    }
}
