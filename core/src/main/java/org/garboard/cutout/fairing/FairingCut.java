package org.garboard.cutout.fairing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;
import org.garboard.craft.StemHole;
import org.garboard.craft.Transducer;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.Lengths;
import org.garboard.cutout.part.Bend;
import org.garboard.cutout.part.BodyEnvelope;
import org.garboard.cutout.part.BodyOutline;
import org.garboard.cutout.part.BodySeat;
import org.garboard.cutout.part.BottomThere;
import org.garboard.cutout.part.CoreRemoval;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.cutout.part.SawCut;
import org.garboard.cutout.part.SawPlane;
import org.garboard.cutout.part.SkinEllipse;
import org.garboard.cutout.part.SkinPlate;
import org.garboard.cutout.part.ThroughHullWish;
import org.garboard.cutout.skin.AxisFrame;
import org.garboard.cutout.skin.Skin;
import org.garboard.cutout.skin.SmoothPiece;
import org.garboard.cutout.template.Template;
import org.garboard.hull.Hull;
import org.garboard.mount.BlockSize;
import org.garboard.skin.Layup;
import org.garboard.solid.Height;
import org.garboard.solid.Loop;

/**
 * Makes a fairing block: its face level athwartships and along the run of the bottom, its stem square to that face.
 */
public final class FairingCut {
    /** Least height of the block's low side [m]: common practice, no source. */
    private static final double LOW_SIDE = 0.006;
    /** Least thickness over the body [m]; our choice. */
    private static final double ROOF = 0.005;
    /** A stem's hole keeps so far inside the recess [m]; our choice. */
    private static final double ROOM = 0.002;
    /** What a bandsaw takes [m]; our choice. */
    public static final double KERF = 0.003;
    /** Common practice, no source. */
    private static final double MOST_DROP_DEG = 2;
    private static final double FULLEST = 2;
    private static final double SLIMMEST = 8;
    private static final double MOST_TOE_DEG = 15;
    private static final double EVERY = 0.025;
    /** Outlines to cut stray by no more, whatever meshes may [m]; the planform's by half of it. */
    private static final double CUTTING_CHORD = 1e-4;
    /** Less than a coat of paint [m]. */
    private static final double PAINT = 1e-4;

    private final Transducer body;
    private final FairingWish wish;
    private final double clear;
    private final ThroughHullWish through;
    private final AxisFrame frame;
    private final SmoothPiece piece;
    private final BodyOutline recess;
    private final BlockPlan plan;
    private final double step;
    private final Loop outline;
    private final List<NamedSolid> solids = new ArrayList<>();

    private FairingCut(Transducer body, FairingWish wish, double clear, AxisFrame frame, SmoothPiece piece) throws CannotBeBuilt {
        this.body = body;
        this.wish = wish;
        this.clear = clear;
        this.through = wish.throughHull();
        this.frame = frame;
        this.piece = piece;
        this.recess = BodyOutline.of(body).widened(through.gap());
        this.plan = new BlockPlan(wish.planform(), wish.slenderness(), recess);
        Loop coarse = plan.outline(through.chord(), plan.length() / 10);
        piece.require(frame, coarse, "the fairing block");
        Bend bend = Bend.under(frame, coarse);
        double skin = through.skin().map(Layup::thickness).orElse(0.0);
        bend.require(skin);
        this.step = bend.step(through.chord(), skin);
        this.outline = plan.outline(through.chord(), step);
    }

    /** Makes the block for a place of which no boundary layer is known. */
    public static FairingBlock cut(Hull hull, Transducer body, FairingWish wish, double x, double y) throws CannotBeBuilt {
        return cut(hull, body, wish, 0, x, y);
    }

    /**
     * Makes the block for a place.
     *
     * @param clear least height of the face that brings it below the slow water there [m]; a height that is wished goes before it
     * @param x of the body's middle, aft of station 0 [m]
     * @param y of it, to starboard [m]
     * @throws CannotBeBuilt with the figure that fails and what would work
     */
    public static FairingBlock cut(Hull hull, Transducer body, FairingWish wish, double clear, double x, double y) throws CannotBeBuilt {
        wish.throughHull().check();
        between("the face's after edge " + Lengths.deg(wish.trailingEdgeLower()) + " lower than the run of the bottom",
            wish.trailingEdgeLower().degrees(), 0, MOST_DROP_DEG, " deg");
        between("a block " + wish.slenderness() + " times as long as wide", wish.slenderness(), FULLEST, SLIMMEST, "");
        between("a toe of " + Lengths.deg(wish.toe()), wish.toe().degrees(), -MOST_TOE_DEG, MOST_TOE_DEG, " deg");
        Skin skin = BottomThere.require(hull, x, y);
        double[] face = new double[Skin.SIZE];
        skin.at(x, y, face);
        AxisFrame frame = AxisFrame.levelAthwart(skin, x, y, Math.atan(face[1]) - wish.trailingEdgeLower().radians(), wish.toe().radians());
        return new FairingCut(body, wish, clear, frame, new SmoothPiece(hull, x, y)).build();
    }

    /** The size of the block for a body, wherever it goes; as large as it may be where no block holds the body. */
    public static BlockSize size(Transducer body, FairingWish wish) {
        try {
            BlockPlan plan = new BlockPlan(wish.planform(), wish.slenderness(), BodyOutline.of(body).widened(wish.throughHull().gap()));
            return new BlockSize(plan.length(), plan.width(), LOW_SIDE, ROOF, plan.roomAtNose(), -plan.nose(),
                plan.tail() * Math.tan(wish.trailingEdgeLower().radians()), wish.height().orElse(Double.NaN));
        } catch (CannotBeBuilt none) {
            double length = BlockPlan.WIDEST * wish.slenderness();
            double ahead = wish.planform().widest() * length;
            return new BlockSize(length, BlockPlan.WIDEST, LOW_SIDE, ROOF, BlockPlan.WIDEST, ahead,
                (length - ahead) * Math.tan(wish.trailingEdgeLower().radians()), wish.height().orElse(Double.NaN));
        }
    }

    private static void between(String what, double value, double least, double most, String unit) throws CannotBeBuilt {
        if (!(value >= least - 1e-9 && value <= most + 1e-9)) {
            throw new CannotBeBuilt(what, (value < least ? least : most) + unit + "; from " + least + " to " + most + unit);
        }
    }

    private FairingBlock build() throws CannotBeBuilt {
        Loop recessLoop = recess.loop(through.chord(), step);
        double lowest = extreme(outline, frame::outside, -1);
        double needed = Math.max(LOW_SIDE - lowest, body.height() + ROOF - extreme(recessLoop, frame::outside, -1));
        double height = height(needed);
        double highest = extreme(outline, frame::outside, 1) + height;
        double roofPlane = body.height() - height;
        Optional<Loop> stem = stem(recessLoop);
        List<Loop> holes = plan.holes(through.chord());
        List<Loop> all = new ArrayList<>(holes);
        stem.ifPresent(loop -> all.add(0, loop));
        NoseRound nose = nose(height);
        solids.add(new NamedSolid("fairing-block", new BlockBodies(frame, outline, recessLoop, stem, holes.get(0), holes.get(1), step,
            through.chord()).outer(-height, roofPlane, nose, plan.nose())));
        SawPlane saw = SawPlane.under(frame::outside, outline);
        OptionalDouble blank = OptionalDouble.empty();
        OptionalDouble stemNeeded = OptionalDouble.empty();
        if (through.skin().isPresent()) {
            double top = inner(all);
            blank = OptionalDouble.of(blank(height, top));
            stemNeeded = stem.isPresent() ? OptionalDouble.of(top - roofPlane + ThroughHullWish.NUT) : OptionalDouble.empty();
            if (stemNeeded.isPresent()) {
                through.checkStem(stemNeeded.getAsDouble());
                sleeve(stem.orElseThrow(), roofPlane, top);
            }
        }
        double stemTop = roofPlane + through.stemLength().orElse(stemNeeded.orElse(0));
        solids.add(0, new NamedSolid("transducer-body", BodyEnvelope.of(frame, body, -height, stemTop, through.chord())));
        BlockTemplates flat = new BlockTemplates(frame, plan, recess, Math.min(through.chord(), CUTTING_CHORD),
            stem.isPresent() ? OptionalDouble.of(hole()) : OptionalDouble.empty(), through.skin().isPresent(), core());
        if (core().isPresent()) {
            for (Loop opening : flat.coreOpenings(core().get())) {
                piece.require(frame, opening, "the core that comes out");
            }
        }
        List<Template> templates = flat.of(all);
        return new FairingBlock(frame.origin(), frame.up(), wish.planform(), plan.length(), plan.width(), height, lowest + height, highest,
            extreme(recessLoop, frame::outside, -1) - roofPlane, SawCut.of(saw, -height, plan.nose(), plan.tail(), plan.halfBreadth(0), 1, blank),
            new BodySeat(recess, 0, body.height(), false), rows(height, nose), nose, stem.map(loop -> SkinEllipse.of(hole(), frame.up(), frame.normal())),
            plan.bolt(), plan.pin(), BlockPlan.BOLT_HOLE, core(), sleeveWall(), stemNeeded, solids, templates);
    }

    private double height(double needed) throws CannotBeBuilt {
        double height = wish.height().orElse(Math.ceil(Math.max(needed, clear) * 1000 - 1e-6) / 1000);
        if (height < needed - PAINT) {
            throw new CannotBeBuilt("at a height of " + Lengths.mm(height) + " the block does not hold the body, "
                + Lengths.mm(body.height()) + " high, and " + Lengths.mm(LOW_SIDE) + " at its low side", "a height of " + Lengths.mmUp(needed) + " or more");
        }
        double high = extreme(outline, frame::outside, 1) + height;
        if (high > plan.width()) {
            double most = height - (high - plan.width());
            throw new CannotBeBuilt("the block's high side would be " + Lengths.mm(high) + " and its width " + Lengths.mm(plan.width())
                + ": higher than wide it sheds a wake of its own", most >= needed ? "a height of " + Lengths.mmDown(most) + " or less"
                : "a lower body, a fuller planform, or a site with less deadrise");
        }
        return height;
    }

    private Optional<Loop> stem(Loop recessLoop) throws CannotBeBuilt {
        if (!(body.stemDiameter() > 0)) {
            return Optional.empty();
        }
        double hole = hole();
        Loop loop = Loop.circle(0, 0, hole / 2, through.chord());
        if (!recessLoop.clears(loop, ROOM)) {
            throw new CannotBeBuilt("a stem's hole of " + Lengths.mm(hole) + " leaves the body, " + Lengths.mm(Math.min(body.length(), body.width()))
                + " at its narrowest, no shoulder to bear on", "a thinner stem, or a body at least " + Lengths.mmUp(hole + 2 * ROOM) + " both ways");
        }
        return Optional.of(loop);
    }

    /** Diameter of the stem's hole, right through. */
    private double hole() {
        return StemHole.diameter(body.stemDiameter(), through.sleeve());
    }

    /** The sleeve fills the hole, and saws come in steps. */
    private double sleeveWall() {
        return through.sleeve() > 0 && body.stemDiameter() > 0 ? (hole() - StemHole.eased(body.stemDiameter())) / 2 : 0;
    }

    /** Round the stem from the body's top to the top of the inner block. */
    private void sleeve(Loop stem, double roof, double top) {
        if (sleeveWall() > 0) {
            Loop bore = Loop.circle(0, 0, StemHole.eased(body.stemDiameter()) / 2, through.chord());
            solids.add(new NamedSolid("sleeve", SkinPlate.between(frame, stem, List.of(bore), step, Height.level(roof), Height.level(top))));
        }
    }

    /** The skin under the block and the block inside; height of its top. */
    private double inner(List<Loop> holes) {
        double skin = through.skin().orElseThrow().thickness();
        Height inside = (u, v) -> frame.inside(u, v, skin);
        double top = extreme(outline, inside::at, 1) + through.block();
        solids.add(new NamedSolid("hull-skin", SkinPlate.skin(frame, outline, holes, step, skin)));
        solids.add(new NamedSolid("inner-block", SkinPlate.between(frame, outline, holes, step, inside, Height.level(top))));
        return top;
    }

    private double blank(double height, double top) {
        double skin = through.skin().orElseThrow().thickness();
        return extreme(outline, (u, v) -> frame.outside(u, v) + height + top - frame.inside(u, v, skin), 1) + KERF;
    }

    /** The least (-1) or greatest (1) of a height along a loop, halfway to its middle and at its middle. */
    private static double extreme(Loop loop, DoubleBinaryOperator height, int sign) {
        double most = sign * height.applyAsDouble(0, 0);
        for (int i = 0; i < loop.size(); i++) {
            most = Math.max(most, sign * height.applyAsDouble(loop.u(i), loop.v(i)));
            most = Math.max(most, sign * height.applyAsDouble(loop.u(i) / 2, loop.v(i) / 2));
        }
        return sign * most;
    }

    /** As high as the block at its nose, or as its lower side beside the nose allows. */
    private NoseRound nose(double height) {
        NoseRound unit = new NoseRound(1, plan.roomAtNose());
        double most = Double.POSITIVE_INFINITY;
        for (int i = 0; i < outline.size(); i++) {
            double side = frame.outside(outline.u(i), outline.v(i)) + height;
            most = Math.min(most, unit.heightFor(outline.u(i) - plan.nose(), side));
        }
        return new NoseRound(most, plan.roomAtNose());
    }

    private List<HeightRow> rows(double height, NoseRound nose) {
        List<HeightRow> rows = new ArrayList<>();
        for (int k = (int) Math.ceil(plan.nose() / EVERY); k * EVERY <= plan.tail(); k++) {
            double aft = k * EVERY;
            double half = plan.halfBreadth(aft);
            rows.add(new HeightRow(aft, half, frame.outside(aft, -half) + height, frame.outside(aft, 0) + height,
                frame.outside(aft, half) + height, nose.back(aft - plan.nose())));
        }
        return rows;
    }

    private Optional<CoreRemoval> core() {
        return through.skin().filter(Layup.Sandwich.class::isInstance).map(skin -> CoreRemoval.of((Layup.Sandwich) skin, 0));
    }
}
