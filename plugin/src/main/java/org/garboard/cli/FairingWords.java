package org.garboard.cli;

import java.util.ArrayList;
import java.util.List;
import org.garboard.craft.Craft;
import org.garboard.craft.HomeWater;
import org.garboard.craft.RunningSpeed;
import org.garboard.cutout.Lengths;
import org.garboard.cutout.fairing.FairingBlock;
import org.garboard.cutout.part.SawCut;
import org.garboard.cutout.part.SkinEllipse;
import org.garboard.flow.cavitation.Inception;
import org.garboard.flow.water.Water;
import org.garboard.job.Job;
import org.garboard.units.FixedDecimal;

/** A fairing block in words. */
final class FairingWords {
    private static final double KNOT = 1852 / 3600.0;

    private FairingWords() {
    }

    static List<String> lines(FairingBlock block, Job job) {
        List<String> lines = new ArrayList<>();
        lines.add("Fairing block: " + block.planform().words() + ", " + Lengths.mm(block.length()) + " long, " + Lengths.mm(block.width())
            + " wide; face " + Lengths.mm(block.height()) + " below the skin at the stem, level athwartships; side " + Lengths.mm(block.low())
            + " at its lowest, " + Lengths.mm(block.high()) + " at its highest.");
        lines.add(saw(block.saw()));
        lines.add("Stem square to the face; pin " + Lengths.mm(-block.pin()) + " ahead of it, bolt " + Lengths.mm(block.bolt()) + " abaft, holes "
            + Lengths.mm(block.boltHole()) + ".");
        block.stemHole().map(FairingWords::ellipse).ifPresent(lines::add);
        if (block.sleeve() > 0) {
            lines.add(CutoutWords.sleeve(block.sleeve(), "stem"));
        }
        block.stemNeeded().ifPresent(needed -> lines.add("Stem: " + Lengths.mm(needed) + " or more above the body's top."));
        if (block.saw().blank().isEmpty()) {
            lines.add(CutoutWords.SKIN_NOT_TOLD);
        }
        block.core().map(core -> CutoutWords.core(core, "each hole")).ifPresent(lines::add);
        lines.addAll(nose(block, job));
        return lines;
    }

    private static String saw(SawCut saw) {
        String blank = saw.blank().isPresent() ? " One blank " + Lengths.mmUp(saw.blank().getAsDouble()) + " high makes both blocks, the saw's kerf in it." : "";
        return "Saw cut, the blank on its face: " + CutoutWords.tilts(saw) + "; cut " + Lengths.mm(saw.port()) + " above the face at the widest place to port, "
            + Lengths.mm(saw.starboard()) + " to starboard; then scribe off up to " + Lengths.mm(saw.left()) + "." + blank;
    }

    private static String ellipse(SkinEllipse hole) {
        return "Stem's hole in the skin: " + Lengths.mm(hole.minor()) + " round, an ellipse " + Lengths.mm(hole.major()) + " long where it meets the skin at "
            + Lengths.deg(hole.lean()) + "; drill it through the block, square to the face.";
    }

    /** At the surface, where water boils soonest. */
    private static List<String> nose(FairingBlock block, Job job) {
        HomeWater home = job.particulars().craft().map(Craft::water).orElse(HomeWater.SEA);
        Inception water = new Inception(new Water(home.celsius(), home.salinity()), 0);
        double speed = block.boilsAt(water);
        List<String> lines = new ArrayList<>();
        lines.add("Nose: round the face's forward edge to a quarter ellipse " + Lengths.mm(block.nose().height()) + " high, run out over "
            + Lengths.mm(block.nose().length()) + "; the solid has it so. So rounded nothing boils on the block below " + knots(speed)
            + " at the surface.");
        job.particulars().craft().ifPresent(craft -> {
            RunningSpeed top = craft.speeds().get(craft.speeds().size() - 1);
            if (top.knots() * KNOT > speed) {
                lines.add("LOOK: at " + top.name() + ", " + FixedDecimal.format(top.knots(), 1) + " kn, it may boil; "
                    + block.noseFor(top.knots() * KNOT, water).stream().mapToObj(run -> "a nose that surely does not runs out over " + Lengths.mmUp(run)
                    + ": ").findFirst().orElse("") + "a more slender or a lower block.");
            }
        });
        return lines;
    }

    private static String knots(double speed) {
        return FixedDecimal.format(Math.floor(speed / KNOT * 10) / 10, 1) + " kn";
    }
}
