package org.garboard.cutout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.Transducer;
import org.garboard.cutout.fairing.FairingCut;
import org.garboard.cutout.fairing.FairingWish;
import org.garboard.cutout.fairing.Planform;
import org.garboard.cutout.flush.FlushCut;
import org.garboard.cutout.inhull.BathCut;
import org.garboard.cutout.inhull.BathWish;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.cutout.part.ThroughHullWish;
import org.garboard.cutout.transom.BracketCut;
import org.garboard.cutout.transom.BracketWish;
import org.garboard.solid.Solid;
import org.garboard.units.Angle;

/** What is cut to port is the mirror image of what is cut to starboard; what cannot be built on one side cannot on the other. */
class AnyMirroredRequestTest {

    /** Parts at one side, 1 to starboard and -1 to port. */
    private interface Cut {
        List<NamedSolid> to(int side) throws CannotBeBuilt;
    }

    @Property(tries = 60, shrinking = ShrinkingMode.OFF, seed = "58")
    void law_flushThroughHull(@ForAll long seed) {
        AnyRequest any = new AnyRequest(seed);
        Transducer body = any.body();
        ThroughHullWish wish = any.wish();
        double x = any.x();
        double y = any.y();
        assertMirrored(side -> FlushCut.cut(any.hull, body, wish, x, side * y).solids());
    }

    @Property(tries = 60, shrinking = ShrinkingMode.OFF, seed = "58")
    void law_fairing(@ForAll long seed) {
        AnyRequest any = new AnyRequest(seed);
        Transducer body = any.body();
        ThroughHullWish through = any.wish();
        double slenderness = any.from(2.5, 5);
        double lower = any.from(0, 2);
        double toe = any.from(-3, 3);
        double x = any.x();
        double y = any.y();
        assertMirrored(side -> FairingCut.cut(any.hull, body, new FairingWish(Planform.values()[0], slenderness, OptionalDouble.empty(),
            Angle.ofDegrees(lower), Angle.ofDegrees(side * toe), through), x, side * y).solids());
    }

    @Property(tries = 60, shrinking = ShrinkingMode.OFF, seed = "58")
    void law_bath(@ForAll long seed) {
        AnyRequest any = new AnyRequest(seed);
        Transducer body = any.body();
        BathWish wish = any.bath();
        double x = any.x();
        double y = any.y();
        assertMirrored(side -> BathCut.cut(any.hull, body, wish, x, side * y).solids());
    }

    @Property(tries = 60, shrinking = ShrinkingMode.OFF, seed = "58")
    void law_bracket(@ForAll long seed) {
        AnyRequest any = new AnyRequest(seed);
        Transducer body = any.body();
        BracketWish wish = any.bracket();
        double y = any.y();
        assertMirrored(side -> BracketCut.cut(any.hull, body, wish, BottomFeatures.NOT_LISTED, Optional.empty(), side * y).solids());
    }

    private static void assertMirrored(Cut cut) {
        List<NamedSolid> starboard;
        try {
            starboard = cut.to(1);
        } catch (CannotBeBuilt refusal) {
            try {
                cut.to(-1);
                fail("only to starboard: " + refusal.getMessage());
            } catch (CannotBeBuilt likewise) {
                return;
            }
            return;
        }
        try {
            List<NamedSolid> port = cut.to(-1);
            for (int k = 0; k < starboard.size(); k++) {
                assertMirrored(starboard.get(k).solid(), port.get(k).solid(), starboard.get(k).name());
            }
        } catch (CannotBeBuilt refusal) {
            fail("only to port: " + refusal.getMessage());
        }
    }

    /** Fillings between outlines are not woven as mirror images, and so hollow a curved face by a little more or less. */
    private static void assertMirrored(Solid starboard, Solid port, String name) {
        assertEquals(starboard.volume(), port.volume(), 1e-3 * starboard.volume(), name);
        assertEquals(most(starboard, starboard::x), most(port, port::x), 1e-6, name);
        assertEquals(most(starboard, starboard::y), most(port, v -> -port.y(v)), 1e-6, name);
        assertEquals(most(starboard, v -> -starboard.y(v)), most(port, port::y), 1e-6, name);
        assertEquals(most(starboard, starboard::z), most(port, port::z), 1e-6, name);
        assertEquals(most(starboard, v -> -starboard.z(v)), most(port, v -> -port.z(v)), 1e-6, name);
    }

    private static double most(Solid solid, IntToDoubleFunction of) {
        return IntStream.range(0, solid.vertices()).mapToDouble(of).max().orElseThrow();
    }
}
