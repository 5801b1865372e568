package org.garboard.cutout.flush;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.craft.StemHole;
import org.garboard.craft.Transducer;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.FlatPoint;
import org.garboard.cutout.flush.FlushCutout.Range;
import org.garboard.cutout.part.Bend;
import org.garboard.cutout.part.BodyEnvelope;
import org.garboard.cutout.part.BodyOutline;
import org.garboard.cutout.part.BodySeat;
import org.garboard.cutout.part.BottomThere;
import org.garboard.cutout.part.CoreRemoval;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.cutout.part.SawCut;
import org.garboard.cutout.part.SawPlane;
import org.garboard.cutout.part.SkinPlate;
import org.garboard.cutout.part.ThroughHullWish;
import org.garboard.cutout.skin.AxisFrame;
import org.garboard.cutout.skin.SmoothPiece;
import org.garboard.cutout.template.Development;
import org.garboard.cutout.template.Template;
import org.garboard.hull.Hull;
import org.garboard.skin.Layup;
import org.garboard.solid.Loop;
import org.garboard.solid.Solid;
import org.garboard.units.Angle;

/** Cuts a flush through-hull: hole square to the skin, never at the element's inclination. */
public final class FlushCut {
    /** A stem's hole keeps so far inside the body's outline, or the block has no roof [m]; our choice. */
    private static final double ROOM = 0.002;
    /** Outlines to cut stray by no more, whatever meshes may [m]. */
    private static final double CUTTING_CHORD = 5e-5;

    private final Transducer body;
    private final ThroughHullWish wish;
    private final AxisFrame frame;
    private final BodyOutline outline;
    private final BodyOutline cut;
    private final double coarse;
    private final List<NamedSolid> solids = new ArrayList<>();
    private final List<Template> templates = new ArrayList<>();
    private double face;
    private double proud;

    private FlushCut(Transducer body, ThroughHullWish wish, AxisFrame frame) throws CannotBeBuilt {
        this.body = body;
        this.wish = wish;
        this.frame = frame;
        this.outline = BodyOutline.of(body);
        this.cut = outline.widened(wish.gap() + wish.sleeve());
        this.coarse = Math.max(body.length(), body.width()) / 4;
    }

    /**
     * Cuts at a place.
     *
     * @param x of the body's middle, aft of station 0 [m]
     * @param y of it, to starboard [m]
     * @throws CannotBeBuilt with the figure that fails and what would work
     */
    public static FlushCutout cut(Hull hull, Transducer body, ThroughHullWish wish, double x, double y) throws CannotBeBuilt {
        wish.check();
        AxisFrame frame = AxisFrame.squareToSkin(BottomThere.require(hull, x, y), x, y);
        FlushCut work = new FlushCut(body, wish, frame);
        SmoothPiece piece = new SmoothPiece(hull, x, y);
        if (wish.skin().isPresent()) {
            piece.require(frame, work.cut.widened(wish.overlap()).loop(wish.chord(), work.coarse), "the backing block");
        } else {
            piece.require(frame, work.cut.loop(wish.chord(), work.coarse), "the cutout");
        }
        if (wish.skin().orElse(null) instanceof Layup.Sandwich cored) {
            piece.require(frame, work.cut.widened(CoreRemoval.of(cored, wish.overlap()).filled()).loop(wish.chord(), work.coarse),
                "the core that comes out");
        }
        return work.build();
    }

    private FlushCutout build() throws CannotBeBuilt {
        layFace();
        double hole = body.stemDiameter() > 0 ? StemHole.diameter(body.stemDiameter()) : 0;
        Optional<CoreRemoval> core = wish.skin().filter(Layup.Sandwich.class::isInstance)
            .map(skin -> CoreRemoval.of((Layup.Sandwich) skin, wish.overlap()));
        Loop edge = cut.loop(cuttingChord(), step(cut, 0));
        Optional<Range> thickness = Optional.empty();
        Optional<SawCut> wedge = Optional.empty();
        Optional<BodySeat> seat = Optional.empty();
        OptionalDouble stemNeeded = OptionalDouble.empty();
        double stemTop = face + body.height() + wish.stemLength().orElse(0);
        if (wish.skin().isPresent()) {
            double skin = wish.skin().get().thickness();
            boolean roofed = isRoofed(hole);
            BackingBlock backing = inside(skin, hole, roofed);
            double top = backing.top();
            thickness = Optional.of(thickness(skin, top));
            double overBody = roofed ? top - backing.roof() : 0;
            SawCut sawn = wedge(skin, top, Math.max(thickness.get().greatest(), overBody));
            wedge = Optional.of(sawn);
            boolean lip = overBody > sawn.middle();
            seat = roofed ? Optional.of(new BodySeat(lip ? outline : cut, sawn.middle(), overBody, lip)) : Optional.empty();
            stemNeeded = OptionalDouble.of(Math.max(0, top - face - body.height()) + ThroughHullWish.NUT);
            wish.checkStem(stemNeeded.getAsDouble());
            stemTop = face + body.height() + wish.stemLength().orElse(stemNeeded.getAsDouble());
        }
        solids.add(0, new NamedSolid("transducer-body", BodyEnvelope.of(frame, body, face, stemTop, wish.chord())));
        templates.add(0, developed("hull-cutout", edge));
        if (core.isPresent()) {
            templates.add(developed("core-removal", cut.widened(core.get().filled()).loop(cuttingChord(), coarse)));
        }
        return new FlushCutout(frame.origin(), frame.up(), ElementLean.of(body.elementInclination(), deadrise(), frame.origin().getY()), cut,
            IntStream.range(0, edge.size()).mapToObj(i -> onSkin(edge, i)).toList(), proud, hole, core, thickness, wedge, seat,
            wish.sleeve(), stemNeeded, solids, templates);
    }

    /** Puts the face midway between where it would stand proud of the skin and where it would lie hollow. */
    private void layFace() {
        Loop loop = outline.loop(wish.chord(), coarse);
        double least = 0;
        double most = 0;
        for (int i = 0; i < loop.size(); i++) {
            for (double share = 0.5; share <= 1; share += 0.5) {
                double height = frame.outside(share * loop.u(i), share * loop.v(i));
                least = Math.min(least, height);
                most = Math.max(most, height);
            }
        }
        face = (least + most) / 2;
        proud = (most - least) / 2;
    }

    /** The skin with the cut in it, and the backing block. */
    private BackingBlock inside(double skin, double hole, boolean roofed) throws CannotBeBuilt {
        BodyOutline block = cut.widened(wish.overlap());
        Bend bend = Bend.under(frame, block.loop(wish.chord(), coarse));
        bend.require(skin);
        double step = bend.step(wish.chord(), skin);
        double side = Math.min(step, coarse);
        Loop outer = block.loop(wish.chord(), side);
        Loop edge = cut.loop(wish.chord(), side);
        solids.add(new NamedSolid("hull-skin", SkinPlate.skin(frame, outer, List.of(edge), step, skin)));
        if (wish.sleeve() > 0) {
            Loop bore = outline.widened(wish.gap()).loop(wish.chord(), side);
            solids.add(new NamedSolid("sleeve", SkinPlate.skin(frame, edge, List.of(bore), step, skin)));
        }
        BackingBlock backing = new BackingBlock(frame, skin, wish.block());
        Loop plug = outline.loop(wish.chord(), side);
        Loop stem = hole > 0 ? Loop.circle(0, 0, hole / 2, wish.chord()) : plug;
        double bodyTop = face + body.height();
        Solid solid = roofed ? backing.over(outer, edge, plug, stem, bodyTop, step) : backing.ring(outer, edge, bodyTop, step);
        solids.add(new NamedSolid("backing-block", solid));
        templates.add(new Template("backing-block", Template.Up.OUTSIDE, flat(block.loop(cuttingChord(), coarse)),
            roofed ? List.of() : List.of(flat(cut.loop(cuttingChord(), coarse))),
            roofed ? List.of(new Template.RoundHole(new FlatPoint(0, 0), hole)) : List.of(), List.of(), 0));
        return backing;
    }

    /** Whether the block is closed over the body but for the stem's hole. */
    private boolean isRoofed(double hole) {
        return hole > 0 && outline.loop(wish.chord(), coarse).clears(Loop.circle(0, 0, hole / 2, wish.chord()), ROOM);
    }

    private Range thickness(double skin, double top) {
        Loop block = cut.widened(wish.overlap()).loop(wish.chord(), coarse);
        double[] heights = IntStream.range(0, block.size())
            .mapToDouble(i -> top - frame.inside(block.u(i), block.v(i), skin)).sorted().toArray();
        return new Range(heights[0], heights[heights.length - 1]);
    }

    private SawCut wedge(double skin, double top, double highest) {
        BodyOutline block = cut.widened(wish.overlap());
        SawPlane plane = SawPlane.under((u, v) -> frame.inside(u, v, skin), block.loop(wish.chord(), coarse));
        return SawCut.of(plane, top, -block.length() / 2, block.length() / 2, block.width() / 2, -1, OptionalDouble.of(highest));
    }

    private double cuttingChord() {
        return Math.min(wish.chord(), CUTTING_CHORD);
    }

    private double step(BodyOutline part, double thickness) {
        return Math.min(coarse, Bend.under(frame, part.loop(wish.chord(), coarse)).step(wish.chord(), thickness));
    }

    private Template developed(String name, Loop loop) throws CannotBeBuilt {
        Development flat = Development.of(frame, loop);
        return new Template(name, Template.Up.OUTSIDE, flat.outline(), List.of(), List.of(), flat.cross(), flat.stretch());
    }

    static List<FlatPoint> flat(Loop loop) {
        return IntStream.range(0, loop.size()).mapToObj(i -> new FlatPoint(loop.u(i), loop.v(i))).toList();
    }

    private Vector3D onSkin(Loop loop, int i) {
        return frame.toHull(loop.u(i), loop.v(i), frame.outside(loop.u(i), loop.v(i)));
    }

    /** Of the skin at the site, positive when it rises outboard. */
    private Angle deadrise() {
        double slope = -frame.up().getY() / frame.up().getZ();
        return Angle.ofRadians(Math.atan(frame.origin().getY() < 0 ? -slope : slope));
    }
}
