package org.garboard.cutout.pocket;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.craft.StemHole;
import org.garboard.craft.Transducer;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.PocketDetails;
import org.garboard.cutout.PocketSection;
import org.garboard.cutout.part.BodyOutline;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.cutout.skin.AxisFrame;
import org.garboard.hull.Hull;
import org.garboard.inside.Span;
import org.garboard.mount.PocketWish;
import org.garboard.mount.pocket.Blend;
import org.garboard.mount.pocket.PocketMake;
import org.garboard.mount.pocket.PocketMake.Into;
import org.garboard.units.Angle;

/** A pocket worked out for a body, a wish and a place on a hull. */
public final class PocketShape {
    /** What a body may differ from its maker's figures, our choice: measure it; and bottom paint (common practice, no source) [m]. */
    private static final double INSERT = 5e-4;
    private static final double PAINT = 5e-4;

    private final PocketPlace place;
    private final BoatTold boat;
    private final Transducer body;
    private final PocketMake make;
    private final PocketForm form;
    private final double edgeRise;
    private final PocketSurface surface;
    private final PocketOutlines outlines;
    private final PocketParts parts;

    private PocketShape(PocketPlace place, BoatTold boat, Transducer body, PocketMake make, PocketSetting setting) throws CannotBeBuilt {
        this.place = place;
        this.boat = boat;
        this.body = body;
        this.make = make;
        this.form = setting.form();
        this.edgeRise = setting.edgeRise();
        this.surface = new PocketSurface(form);
        this.outlines = new PocketOutlines(form, surface, surface.net());
        this.parts = new PocketParts(place, boat, make, form, surface);
        place.requireClear(outlines.opening());
        met();
        parts.make(body);
    }

    /**
     * Works it out.
     *
     * @param x of its middle [m]
     * @param y of it, to starboard [m]
     * @throws CannotBeBuilt with the figure that fails and what would work
     */
    public static PocketShape of(Hull hull, Transducer body, PocketWish wish, BoatTold boat, double x, double y) throws CannotBeBuilt {
        PocketLimits.check(wish, boat);
        BodyOutline floor = PocketSetting.floor(body, wish);
        PocketPlace place = new PocketPlace(hull, x, y, floor.length(), floor.width());
        place.requireOnSkin();
        return new PocketShape(place, boat, body, wish.make(), PocketSetting.at(place, body, wish, boat));
    }

    /** How far outside the opening an existing hull is cut through for a tray [m]; 0 where it is not, or not known. */
    double cutOutside() {
        return make.into() == Into.EXISTING_BOAT && form.thickness() > 0 ? form.thickness() + make.layup().trayGap() : 0;
    }

    /** Length of the taper to the laminate's thickness. */
    double scarf() {
        return make.layup().scarf();
    }

    /** Makes the skin round the pocket. */
    public void cutSkin(NestedLines lines) {
        parts.cutSkin(lines.cutSeen());
    }

    /** How it is made and what it costs. */
    public PocketDetails details(NestedLines lines) throws CannotBeBuilt {
        double bodyVolume = BodyOutline.of(body).area() * body.height();
        Vector3D crest = outlines.crest();
        double drains = new Pulls(form, surface, surface.net()).plumb();
        return new PocketDetails(make, body.height() > 0 ? gapAtFace() : 0, form.thickness(), steepest(), lines.hullCut(), lines.taperEnd(),
            lines.hullCut().isEmpty() ? parts.openingArea() : PocketLines.area(lines.hullCut().flat()), parts.room().volume() - bodyVolume, met(),
            Math.max(0, crest.getZ() - outlines.rim()), crest, body.stemDiameter() > 0 ? StemHole.diameter(body.stemDiameter()) : 0,
            parts.leastDraft(), drains > 0, place.hull().within() + INSERT + PAINT, parts.notMade(), boat.outlineOnly());
    }

    /** From the body to the wall at the height of the face, in the middle of its sides. */
    private double gapAtFace() {
        return (length() - body.length()) / 2 + form.walls().run(form.depth() - form.face());
    }

    private Angle steepest() {
        return Angle.ofRadians(Math.atan(Blend.PEAK * surface.steepest()));
    }

    private List<String> met() throws CannotBeBuilt {
        if (boat.inside().isEmpty()) {
            return List.of();
        }
        double more = form.thickness() + make.layup().trayGap();
        List<Vector3D> opening = opening();
        Span along = new Span(opening.stream().mapToDouble(Vector3D::getX).min().orElseThrow() - more,
            opening.stream().mapToDouble(Vector3D::getX).max().orElseThrow() + more);
        Span athwart = new Span(opening.stream().mapToDouble(Vector3D::getY).min().orElseThrow() - more,
            opening.stream().mapToDouble(Vector3D::getY).max().orElseThrow() + more);
        return Structure.met(boat.inside().get(), along, athwart, form.depth() + form.thickness());
    }

    public AxisFrame frame() {
        return form.frame();
    }

    PocketSurface surface() {
        return surface;
    }

    PocketPlace place() {
        return place;
    }

    PocketForm form() {
        return form;
    }

    public double length() {
        return form.floor().length();
    }

    public double width() {
        return form.floor().width();
    }

    public double cornerRadius() {
        return form.floor().radius();
    }

    public double depth() {
        return form.depth();
    }

    public double faceDepth() {
        return form.face();
    }

    /** Least height of wall at the floor's outer edges [m]. */
    public double wallHeight() {
        return form.depth() - edgeRise;
    }

    public double endRatio() {
        return form.endRatio();
    }

    /** From the floor's forward end to that of the opening [m]. */
    public double foreRamp() {
        return outlines.extreme(0, -1) - length() / 2;
    }

    public double aftRamp() {
        return outlines.extreme(0, 1) - length() / 2;
    }

    /** Outline of the floor. */
    public List<Vector3D> floor() {
        return outlines.floor();
    }

    /** Where the walls end, on the face's surroundings or on the skin. */
    public List<Vector3D> mouth() {
        return outlines.mouth();
    }

    /** Where pocket and blends meet the skin. */
    public List<Vector3D> opening() {
        return outlines.opening();
    }

    public double volume() {
        return parts.room().volume();
    }

    /** Of skin inside the opening [m2]. */
    public double openingArea() {
        return parts.openingArea();
    }

    public List<PocketSection> sections() {
        return new PocketSections(form, surface, surface.net(), outlines).all();
    }

    public List<NamedSolid> solids() {
        return parts.solids();
    }
}
