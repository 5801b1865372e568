package org.garboard.cutout.fairing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.FlatPoint;
import org.garboard.cutout.part.BodyOutline;
import org.garboard.cutout.skin.AxisFrame;
import org.garboard.cutout.template.Development;
import org.garboard.cutout.template.Template;
import org.garboard.cutout.template.Template.Kind;
import org.garboard.cutout.template.Template.Mark;
import org.garboard.cutout.template.Template.RoundHole;
import org.garboard.cutout.template.Template.Up;
import org.garboard.solid.Loop;

/**
 * The flat outlines of a block: its footprint on the skin, outer and inner block.
 *
 * @param chord by which outlines may stray [m]
 * @param stemHole its diameter [m], where there is a stem
 * @param inner whether there is a block inside
 */
record BlockTemplates(AxisFrame frame, BlockPlan plan, BodyOutline recess, double chord, OptionalDouble stemHole, boolean inner) {

    /** @param holes right through, stem, bolt and pin */
    List<Template> of(List<Loop> holes) throws CannotBeBuilt {
        Development laid = Development.of(frame, plan.outline(chord, plan.length() / 12));
        List<List<FlatPoint>> bored = new ArrayList<>();
        for (Loop hole : holes) {
            bored.add(laid.flat(hole));
        }
        List<Template> templates = new ArrayList<>();
        templates.add(new Template("fairing-footprint", Up.OUTSIDE, laid.outline(), bored, List.of(), laid.cross(), laid.stretch()));
        List<FlatPoint> outline = flat(plan.outline(chord, plan.length()));
        List<FlatPoint> milled = new ArrayList<>(flat(recess.loop(chord / 2, plan.length())));
        milled.add(milled.get(0));
        templates.add(new Template("fairing-block", Up.OUTSIDE, outline, List.of(), drilled(), List.of(new Mark(Kind.SCRIBED, milled)), 0));
        if (inner) {
            templates.add(new Template("inner-block", Up.OUTSIDE, outline, List.of(), drilled(), List.of(), 0));
        }
        return templates;
    }

    private List<RoundHole> drilled() {
        List<RoundHole> drilled = new ArrayList<>(List.of(new RoundHole(new FlatPoint(plan.bolt(), 0), BlockPlan.BOLT_HOLE),
            new RoundHole(new FlatPoint(plan.pin(), 0), BlockPlan.BOLT_HOLE)));
        stemHole.ifPresent(diameter -> drilled.add(new RoundHole(new FlatPoint(0, 0), diameter)));
        return drilled;
    }

    private static List<FlatPoint> flat(Loop loop) {
        return IntStream.range(0, loop.size()).mapToObj(i -> new FlatPoint(loop.u(i), loop.v(i))).toList();
    }
}
