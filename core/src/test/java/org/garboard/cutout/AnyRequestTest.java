package org.garboard.cutout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import org.garboard.craft.BottomFeatures;
import org.garboard.cutout.fairing.FairingBlock;
import org.garboard.cutout.fairing.FairingCut;
import org.garboard.cutout.fairing.FairingWish;
import org.garboard.cutout.fairing.Planform;
import org.garboard.cutout.flush.FlushCut;
import org.garboard.cutout.flush.FlushCutout;
import org.garboard.cutout.inhull.BathCut;
import org.garboard.cutout.inhull.HullBath;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.cutout.part.ThroughHullWish;
import org.garboard.cutout.template.Template;
import org.garboard.cutout.transom.BracketCut;
import org.garboard.cutout.transom.TransomBracket;
import org.garboard.units.Angle;

/** Whatever is asked, on whatever boat: sound solids and templates, or a refusal with a figure; never a broken mesh. */
class AnyRequestTest {
    @Property(tries = 500, shrinking = ShrinkingMode.OFF, seed = "58")
    void law_flushThroughHull(@ForAll long seed) {
        AnyRequest any = new AnyRequest(seed);
        try {
            FlushCutout cutout = FlushCut.cut(any.hull, any.body(), any.wish(), any.x(), any.y());
            sound(cutout.solids(), cutout.templates(), seed);
            any.tell("flush", true);
        } catch (CannotBeBuilt refusal) {
            speaks(refusal);
            any.tell("flush", false);
        }
    }

    @Property(tries = 500, shrinking = ShrinkingMode.OFF, seed = "58")
    void law_fairing(@ForAll long seed) {
        AnyRequest any = new AnyRequest(seed);
        Planform planform = Planform.values()[any.lot.nextInt(2)];
        FairingWish wish = new FairingWish(planform, any.sensible ? any.from(2.5, 5) : any.from(1, 10),
            any.lot.nextInt(3) > 0 ? OptionalDouble.empty() : OptionalDouble.of(any.sensible ? any.from(0.06, 0.10) : any.any()),
            Angle.ofDegrees(any.sensible ? any.from(0, 2) : any.from(-3, 5)), Angle.ofDegrees(any.sensible ? any.from(-3, 3) : any.from(-30, 30)), any.wish());
        try {
            FairingBlock block = FairingCut.cut(any.hull, any.body(), wish, any.x(), any.y());
            sound(block.solids(), block.templates(), seed);
            any.tell("fairing", true);
        } catch (CannotBeBuilt refusal) {
            speaks(refusal);
            any.tell("fairing", false);
        }
    }

    /** Found by lot: a skin of 757 mm near the stem has no inside under the wall. */
    @Example
    void refusesABathOnASkinWithoutAnInside() {
        AnyRequest any = new AnyRequest(400);
        CannotBeBuilt refusal = assertThrows(CannotBeBuilt.class, () -> BathCut.cut(any.hull, any.body(), any.bath(), any.x(), any.y()));
        assertEquals("the skin is 757.4 mm thick, and square to its inside lies no skin under all of the part; what works: "
            + "a thickness of 255 mm at most, or a site farther from the ends of the skin", refusal.getMessage());
    }

    @Property(tries = 500, shrinking = ShrinkingMode.OFF, seed = "58")
    void law_bath(@ForAll long seed) {
        AnyRequest any = new AnyRequest(seed);
        try {
            HullBath bath = BathCut.cut(any.hull, any.body(), any.bath(), any.x(), any.y());
            sound(bath.solids(), bath.templates(), seed);
            assertTrue(bath.litres() > 0 && bath.low() > 0 && bath.brim() > bath.level() - 1e-12 && bath.level() > bath.face(), bath.toString());
            any.tell("bath", true);
        } catch (CannotBeBuilt refusal) {
            speaks(refusal);
            any.tell("bath", false);
        }
    }

    @Property(tries = 500, shrinking = ShrinkingMode.OFF, seed = "58")
    void law_bracket(@ForAll long seed) {
        AnyRequest any = new AnyRequest(seed);
        try {
            TransomBracket bracket = BracketCut.cut(any.hull, any.body(), any.bracket(), BottomFeatures.NOT_LISTED, Optional.empty(), any.y());
            sound(bracket.solids(), bracket.templates(), seed);
            any.tell("bracket", true);
        } catch (CannotBeBuilt refusal) {
            speaks(refusal);
            any.tell("bracket", false);
        }
    }

    /** A solid that exists is closed and right side out; here also that it does not cut through itself. */
    private static void sound(List<NamedSolid> solids, List<Template> templates, long seed) {
        for (NamedSolid part : solids) {
            assertTrue(part.solid().volume() > 0);
            if (seed % 4 == 0) {
                assertEquals(0, SelfCrossing.count(part.solid()), part.name());
            }
        }
        for (Template template : templates) {
            assertTrue(template.stretch() >= 0 && template.stretch() < 0.2 && template.outline().size() >= 3, template.name());
        }
    }

    private static void speaks(CannotBeBuilt refusal) {
        assertFalse(refusal.reason().isBlank() || refusal.remedy().isBlank());
        assertFalse(refusal.getMessage().contains("NaN") || refusal.getMessage().contains("E-"), refusal.getMessage());
    }
}
