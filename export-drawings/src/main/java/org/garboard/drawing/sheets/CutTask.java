package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.garboard.cutout.fairing.FairingBlock;
import org.garboard.cutout.flush.FlushCutout;
import org.garboard.cutout.made.PartsMade;
import org.garboard.cutout.part.CoreRemoval;
import org.garboard.cutout.template.Template;

/**
 * What is cut through the skin along one axis, and how it is found.
 *
 * @param planes through the axis
 * @param openings through the skin, the largest first
 * @param inBlock diameter of the stem's hole in the block over a larger opening [m], none where the opening is the stem's
 * @param core what comes out of a cored skin
 * @param sleeve wall of the sleeve [m], 0 for none
 * @param stemNeeded of the stem above the body's top [m], where the skin is told
 */
record CutTask(SheetTask task, AxisPlanes planes, List<Opening> openings, OptionalDouble inBlock, Optional<CoreRemoval> core, double sleeve,
               OptionalDouble stemNeeded) {
    CutTask {
        openings = List.copyOf(openings);
    }

    /** Where the skin is cut through. */
    static boolean isWanted(PartsMade made) {
        return made.flush().isPresent() || made.fairing().isPresent();
    }

    static CutTask of(SheetTask task) {
        return task.made().flush().map(cutout -> of(task, cutout)).orElseGet(() -> of(task, task.made().fairing().orElseThrow()));
    }

    private static CutTask of(SheetTask task, FlushCutout cutout) {
        OptionalDouble inBlock = cutout.stemHole() > 0 && cutout.wedge().isPresent() ? OptionalDouble.of(cutout.stemHole()) : OptionalDouble.empty();
        return new CutTask(task, AxisPlanes.of(cutout.site(), cutout.axis()), List.of(new Opening("for the body", 0, cutout.opening())), inBlock,
                cutout.core(), cutout.sleeve(), cutout.stemNeeded());
    }

    private static CutTask of(SheetTask task, FairingBlock block) {
        List<Opening> openings = new ArrayList<>();
        Template plan = BlockTask.template(task.made(), "fairing-block");
        for (Template.RoundHole hole : plan.holes()) {
            double aft = hole.centre().u();
            boolean stem = Math.hypot(aft, hole.centre().v()) < 1e-9;
            openings.add(Opening.round(stem ? "for the stem" : aft > 0 ? "for the bolt, abaft the stem" : "for the pin, ahead of the stem", aft, hole.diameter()));
        }
        openings.sort((a, b) -> Double.compare(b.outline().length(), a.outline().length()));
        return new CutTask(task, AxisPlanes.turned(block.site(), block.axis(), task.job().particulars().fairing().toe().radians()), openings,
                OptionalDouble.empty(), block.core(), block.sleeve(), block.stemNeeded());
    }

    /** What the body or its stem goes through. */
    Opening main() {
        return openings.get(0);
    }

    boolean isFlush() {
        return task.made().flush().isPresent();
    }

    /** From the foremost edge to the aftermost [m]. */
    double length() {
        return openings.stream().mapToDouble(opening -> opening.aft() + opening.outline().length() / 2).max().orElseThrow()
                - openings.stream().mapToDouble(opening -> opening.aft() - opening.outline().length() / 2).min().orElseThrow();
    }

    Figures figures() {
        return task.figures();
    }

    double letter() {
        return task.lettering().figures();
    }
}
