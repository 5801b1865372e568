package org.garboard.cli;

import java.util.ArrayList;
import java.util.List;
import org.garboard.cutout.Lengths;
import org.garboard.cutout.flush.ElementLean.Towards;
import org.garboard.cutout.flush.FlushCutout;
import org.garboard.cutout.part.CoreRemoval;
import org.garboard.cutout.part.SawCut;
import org.garboard.cutout.template.Template;
import org.garboard.units.FixedDecimal;

/** A flush cutout in words. */
final class CutoutWords {
    static final String SKIN_NOT_TOLD = "Skin not told: no block inside, no piece of skin. Measure it and write <skin> into the job.";

    private CutoutWords() {
    }

    static List<String> lines(FlushCutout cutout) {
        List<String> lines = new ArrayList<>();
        lines.add("Cutout: hole square to the skin, whatever the element's inclination; the face stands proud of the skin or lies hollow by up to "
            + Lengths.mm(cutout.proud()) + ".");
        if (cutout.lean().towards() != Towards.NOWHERE) {
            lines.add("The element leans to " + (cutout.lean().towards() == Towards.PORT ? "port" : "starboard")
                + ", towards the keel: beam " + Lengths.deg(cutout.lean().left()) + " off plumb at rest; turned round it would be "
                + Lengths.deg(cutout.lean().turnedRound()) + ".");
        }
        cutout.blockThickness().ifPresent(block -> lines.add("Backing block: " + Lengths.mm(block.least()) + " to " + Lengths.mm(block.greatest())
            + " thick, stem's hole " + Lengths.mm(cutout.stemHole()) + "."));
        cutout.wedge().ifPresent(wedge -> lines.add("Saw cut of the backing block, its top on the saw's table: " + tilts(wedge) + "; then scribe off up to "
            + Lengths.mm(wedge.left()) + "."));
        if (cutout.sleeve() > 0) {
            lines.add(sleeve(cutout.sleeve(), "body"));
        }
        if (cutout.blockThickness().isEmpty()) {
            lines.add(SKIN_NOT_TOLD);
        }
        if (cutout.stemHole() > 0) {
            cutout.stemNeeded().ifPresent(needed -> lines.add("Stem: " + Lengths.mm(needed) + " or more above the body's top."));
        }
        cutout.core().map(core -> core(core, "the hull's cut")).ifPresent(lines::add);
        return lines;
    }

    static String tilts(SawCut saw) {
        return "table tilted " + Lengths.deg(saw.across()) + " (positive: higher to starboard), packed up " + Lengths.deg(saw.along())
            + " along it (positive: higher aft)";
    }

    static String sleeve(double wall, String inside) {
        return "Sleeve of plastic between hull and " + inside + ", wall " + Lengths.mm(wall) + ": metal must not touch metal anywhere, fastenings and cable too.";
    }

    static String core(CoreRemoval core, String beyond) {
        return "Core: take it out, and the inner skin, to " + Lengths.mm(core.filled())
            + " beyond " + beyond + " and fill solid; taper the inner skin to " + Lengths.mm(core.taper()) + " beyond it.";
    }

    static List<String> templates(List<Template> templates) {
        return templates.stream().map(template -> "Template " + template.name() + ": check length " + Lengths.mm(template.checkLength())
            + ", largest stretch " + FixedDecimal.format(1000 * template.stretch(), 2) + " mm.").toList();
    }
}
