package org.garboard.drawing.sheets;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.cutout.fairing.FairingBlock;
import org.garboard.cutout.fairing.HeightRow;
import org.garboard.cutout.made.PartsMade;
import org.garboard.cutout.part.BodySeat;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.cutout.part.SawCut;
import org.garboard.cutout.template.Template;
import org.garboard.drawing.Point;
import org.garboard.drawing.Scale;

/**
 * A through-hull's blocks in a frame of their own: from the place along the block aft, athwart it to starboard, and along
 * the hole's axis into the boat.
 *
 * @param name of the block that is sawn
 * @param planes its frame
 * @param face height of the sawn block's plane face in the frame [m]
 * @param heightsUp whether the block stands up from its face into the boat, or hangs down from it
 * @param saw how it is sawn
 * @param rows its heights; none where it is scribed by the skin alone
 */
record BlockTask(SheetTask task, String name, Template plan, AxisPlanes planes, double face, boolean heightsUp, SawCut saw, List<HeightRow> rows) {

    /** Where there is a block to be sawn. */
    static boolean isWanted(PartsMade made) {
        return made.fairing().isPresent() || made.flush().filter(cutout -> cutout.wedge().isPresent()).isPresent();
    }

    static BlockTask of(SheetTask task) {
        return task.made().fairing().map(block -> of(task, block)).orElseGet(() -> ofBacking(task));
    }

    private static BlockTask of(SheetTask task, FairingBlock block) {
        return new BlockTask(task, "fairing block", template(task.made(), "fairing-block"),
                AxisPlanes.turned(block.site(), block.axis(), task.job().particulars().fairing().toe().radians()), -block.height(), true, block.saw(), block.heights());
    }

    private static BlockTask ofBacking(SheetTask task) {
        PartsMade made = task.made();
        Vector3D up = made.flush().orElseThrow().axis();
        Vector3D origin = made.flush().orElseThrow().site();
        NamedSolid block = solid(made, "backing-block").orElseThrow();
        double top = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < block.solid().vertices(); i++) {
            top = Math.max(top, Vector3D.of(block.solid().x(i), block.solid().y(i), block.solid().z(i)).subtract(origin).dot(up));
        }
        return new BlockTask(task, "backing block", template(made, "backing-block"), AxisPlanes.of(origin, up), top, false,
                made.flush().orElseThrow().wedge().orElseThrow(), List.of());
    }

    /** Where the sawn block bears on the body, unless the body goes right through it. */
    Optional<BodySeat> seat() {
        return task.made().fairing().map(FairingBlock::seat).or(() -> task.made().flush().flatMap(flush -> flush.seat()));
    }

    /** Diameter of the stem's hole in it [m]; 0 where there is none. */
    double stemHole() {
        return plan.holes().stream().filter(hole -> Math.hypot(hole.centre().u(), hole.centre().v()) < 1e-9).mapToDouble(Template.RoundHole::diameter).findFirst().orElse(0);
    }

    static Template template(PartsMade made, String name) {
        return made.templates().stream().filter(template -> template.name().equals(name)).findFirst().orElseThrow();
    }

    private static Optional<NamedSolid> solid(PartsMade made, String name) {
        return made.solids().stream().filter(part -> part.name().equals(name)).findFirst();
    }

    /** Its extent fore and aft and athwart, both ways [m]. */
    double tail() {
        return plan.outline().stream().mapToDouble(point -> point.u()).max().orElseThrow();
    }

    double nose() {
        return plan.outline().stream().mapToDouble(point -> point.u()).min().orElseThrow();
    }

    double half() {
        return plan.outline().stream().mapToDouble(point -> point.v()).max().orElseThrow();
    }

    double length() {
        return tail() - nose();
    }

    /** Seen from below: bow to the right, starboard up. */
    static Point below(Scale scale, double aft, double starboard) {
        return new Point(-scale.paper(aft), scale.paper(starboard));
    }

    /** A height above the face that the block lies on as it is sawn, in the frame [m]. */
    double level(double aboveFace) {
        return heightsUp ? face + aboveFace : face - aboveFace;
    }
}
