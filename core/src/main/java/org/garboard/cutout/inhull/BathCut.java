package org.garboard.cutout.inhull;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.garboard.craft.Transducer;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.FlatPoint;
import org.garboard.cutout.Lengths;
import org.garboard.cutout.inhull.HullBath.Depth;
import org.garboard.cutout.part.Bend;
import org.garboard.cutout.part.BodyEnvelope;
import org.garboard.cutout.part.BodyOutline;
import org.garboard.cutout.part.BottomThere;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.cutout.part.SawCut;
import org.garboard.cutout.part.SawPlane;
import org.garboard.cutout.part.SkinPlate;
import org.garboard.cutout.skin.AxisFrame;
import org.garboard.cutout.skin.InsideSkin;
import org.garboard.cutout.skin.Skin;
import org.garboard.cutout.skin.SmoothPiece;
import org.garboard.cutout.template.Development;
import org.garboard.cutout.template.Template;
import org.garboard.hull.Hull;
import org.garboard.skin.Layup;
import org.garboard.solid.Height;
import org.garboard.solid.Loop;

/** Makes the bath of an in-hull transducer, which stands plumb in it. */
public final class BathCut {
    /** Liquid under the face where it comes nearest to the skin [m]: our choice, no air sticks in a gap of that. */
    private static final double CLEAR = 0.002;
    /** Liquid over the face at the heel asked [m]: our choice. */
    private static final double OVER_FACE = 0.010;
    /** No wall is higher [m]. */
    private static final double HIGHEST = 0.5;
    /** Outlines to cut stray by no more, whatever meshes may [m]. */
    private static final double CUTTING_CHORD = 1e-4;

    private final Transducer body;
    private final BathWish wish;
    private final double thickness;
    private final AxisFrame inside;
    private final BodyOutline bore;
    private final BodyOutline wall;
    private final double step;
    private final double side;
    private final List<NamedSolid> solids = new ArrayList<>();
    private final List<Template> templates = new ArrayList<>();

    private BathCut(Hull hull, Transducer body, BathWish wish, double x, double y) throws CannotBeBuilt {
        this.body = body;
        this.wish = wish;
        this.thickness = wish.skin().map(Layup::thickness).orElse(0.0);
        this.bore = BodyOutline.of(body).widened(wish.room());
        this.wall = bore.widened(wish.wall());
        double coarse = Math.max(wall.length(), wall.width()) / 8;
        Skin skin = BottomThere.require(hull, x, y);
        AxisFrame outside = AxisFrame.levelAthwart(skin, x, y, 0, 0);
        Loop around = wall.loop(wish.chord(), coarse);
        new SmoothPiece(hull, x, y).require(outside, around, "the bath");
        Bend bend = Bend.under(outside, around);
        bend.require(thickness);
        this.step = bend.step(wish.chord(), thickness);
        this.side = Math.min(step, coarse);
        this.inside = AxisFrame.levelAthwart(new InsideSkin(skin, thickness), x, y, 0, 0);
        if (thickness > 0) {
            solids.add(new NamedSolid("hull-skin", SkinPlate.skin(outside, wall.loop(wish.chord(), side), List.of(), step, thickness)));
        }
    }

    /**
     * Makes the bath at a place.
     *
     * @param x of the body's middle, aft of station 0 [m]
     * @param y of it, to starboard [m]
     * @throws CannotBeBuilt with the figure that fails and what would work
     */
    public static HullBath cut(Hull hull, Transducer body, BathWish wish, double x, double y) throws CannotBeBuilt {
        wish.check();
        return new BathCut(hull, body, wish, x, y).build();
    }

    private HullBath build() throws CannotBeBuilt {
        Loop outline = BodyOutline.of(body).loop(wish.chord(), side);
        Loop inner = bore.loop(wish.chord(), side);
        Loop outer = wall.loop(wish.chord(), side);
        double highest = extreme(outline, 1);
        double face = highest + CLEAR;
        double tilted = Math.hypot(bore.length(), bore.width()) / 2 * Math.tan(wish.heel().radians());
        // the skin may rise above the face at the wall outboard: the liquid stands over it all the same
        double level = Math.max(face + OVER_FACE + tilted, extreme(inner, 1) + CLEAR);
        double brim = Math.max(level + tilted, extreme(outer, 1) + CLEAR);
        double high = brim - extreme(outer, -1);
        if (high > HIGHEST) {
            throw new CannotBeBuilt("the bath's wall would be " + Lengths.mm(high) + " high at its lowest foot",
                "a wall of 500.0 mm at most: a shorter or narrower body, less heel, or a site with less deadrise");
        }
        solids.add(0, new NamedSolid("transducer-body", BodyEnvelope.of(inside, body, face, face + body.height(), wish.chord())));
        solids.add(new NamedSolid("bath", SkinPlate.between(inside, outer, List.of(inner), step, inside::outside, Height.level(brim))));
        double liquid = SkinPlate.between(inside, inner, List.of(), step, inside::outside, Height.level(level)).volume()
            - outline.area() * Math.min(body.height(), level - face);
        footprint();
        templates.add(new WallStrip(inside, outer, brim).template());
        SawPlane plane = SawPlane.under(inside::outside, outer);
        return new HullBath(inside.origin(), wall.length(), wall.width(), wish.wall(), face,
            new Depth(CLEAR, face - extreme(outline, -1)), level, brim, brim - extreme(outer, 1), high, 1000 * liquid,
            SawCut.of(plane, brim, -wall.length() / 2, wall.length() / 2, wall.width() / 2, -1, OptionalDouble.of(high)), solids, templates);
    }

    /** The least (-1) or greatest (1) height of the skin inside, along a loop, halfway to its middle and there. */
    private double extreme(Loop loop, int sign) {
        double most = 0;
        for (int i = 0; i < loop.size(); i++) {
            most = Math.max(most, sign * inside.outside(loop.u(i), loop.v(i)));
            most = Math.max(most, sign * inside.outside(loop.u(i) / 2, loop.v(i) / 2));
        }
        return sign * most;
    }

    private void footprint() throws CannotBeBuilt {
        double chord = Math.min(wish.chord(), CUTTING_CHORD);
        double sides = Math.max(wall.length(), wall.width()) / 12;
        Development laid = Development.of(inside, wall.loop(chord, sides));
        List<List<FlatPoint>> opening = List.of(laid.flat(bore.loop(chord, sides)));
        templates.add(new Template("bath-footprint", Template.Up.INSIDE, laid.outline(), opening, List.of(), laid.cross(), laid.stretch()));
    }
}
