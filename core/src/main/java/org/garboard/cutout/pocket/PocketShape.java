package org.garboard.cutout.pocket;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.craft.StemHole;
import org.garboard.craft.Transducer;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.FlatPoint;
import org.garboard.cutout.Lengths;
import org.garboard.cutout.PocketDetails;
import org.garboard.cutout.PocketSection;
import org.garboard.cutout.part.Bend;
import org.garboard.cutout.part.BodyEnvelope;
import org.garboard.cutout.part.BodyOutline;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.cutout.pocket.PocketBodies.Half;
import org.garboard.cutout.skin.AxisFrame;
import org.garboard.cutout.skin.HullSkin;
import org.garboard.hull.Hull;
import org.garboard.inside.Span;
import org.garboard.mount.PocketWish;
import org.garboard.mount.pocket.Blend;
import org.garboard.mount.pocket.Floor;
import org.garboard.mount.pocket.FormerWish;
import org.garboard.mount.pocket.FormerWish.Mold;
import org.garboard.mount.pocket.PocketLayup;
import org.garboard.mount.pocket.PocketMake;
import org.garboard.mount.pocket.PocketMake.Into;
import org.garboard.skin.SkinMaterial;
import org.garboard.skin.ThicknessHere;
import org.garboard.solid.Solid;
import org.garboard.units.Angle;

/** A pocket worked out for a body, a wish and a place on a hull. */
public final class PocketShape {
    /** A face this little proud of the skin is flush [m]; our choice, less than a coat of paint. */
    private static final double FLUSH = 1e-4;

    /** What a body may differ from its maker's figures, our choice: measure it; and bottom paint (common practice, no source) [m]. */
    private static final double INSERT = 5e-4;
    private static final double PAINT = 5e-4;

    private final PocketPlace place;
    private final BoatTold boat;
    private final Transducer body;
    private final PocketMake make;
    private final PocketForm form;
    private final PocketSurface surface;
    private final double[] net;
    private final double edgeRise;
    private final Solid room;
    private final double openingArea;
    private final List<NamedSolid> solids = new ArrayList<>();
    private Angle leastDraft = Angle.ofRadians(0);
    private final List<String> notMade = new ArrayList<>();

    private PocketShape(PocketPlace place, BoatTold boat, Transducer body, PocketMake make, PocketForm form, double edgeRise) throws CannotBeBuilt {
        this.place = place;
        this.boat = boat;
        this.body = body;
        this.make = make;
        this.form = form;
        this.edgeRise = edgeRise;
        this.surface = new PocketSurface(form);
        this.net = surface.net(0);
        PocketBodies bodies = new PocketBodies(form, surface);
        this.room = bodies.room(Half.WHOLE, 0);
        this.openingArea = bodies.openingArea();
        place.requireClear(this);
        met();
        make(bodies);
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
        double length = body.length() + 2 * wish.gap();
        double width = body.width() + 2 * wish.gap();
        double radius = body.cornerRadius() > 0 ? body.cornerRadius() + wish.gap() : 0;
        PocketLimits.corner(radius, wish.gap(), Math.min(length, width));
        PocketPlace place = new PocketPlace(hull, x, y, length, width);
        place.requireOnSkin();
        PocketMake make = wish.make();
        BodyOutline floor = new BodyOutline(length, width, radius);
        AxisFrame frame = frame(place, make.floor(), length);
        double edgeRise = edgeRise(frame, floor);
        if (edgeRise != edgeRise) {
            throw place.offSkin();
        }
        double least = edgeRise + body.height();
        double depth = wish.depth().orElse(Math.ceil(least * 1000 - 1e-6) / 1000);
        if (depth < least - FLUSH) {
            throw new CannotBeBuilt("at a depth of " + Lengths.mm(depth) + " the face stands " + Lengths.mm(least - depth)
                + " proud of the skin at its outer edges", "a depth of " + Lengths.mm(Math.ceil(least * 1000) / 1000) + " or more");
        }
        double face = depth - body.height();
        double bent = Bend.under(frame, floor.loop(make.chord(), 0.1)).step(make.chord(), 0);
        PocketForm form = new PocketForm(frame, floor, depth, face, make.walls(), wish.endRatio(), wish.sideRatio(),
            place.creases(frame), laminate(make, boat, place), make.chord(), bent);
        place.requireCreasesInEnds(form);
        place.requireRampsOnTable(form);
        return new PocketShape(place, boat, body, make, form, edgeRise);
    }

    private static AxisFrame frame(PocketPlace place, Floor floor, double length) throws CannotBeBuilt {
        double drop = floor.trailingEdgeLower().radians();
        HullSkin skin = new HullSkin(place.hull());
        if (floor.lies() == Floor.Lies.SQUARE_TO_SKIN && place.y() != 0) {
            return AxisFrame.leaningAft(skin, place.x(), place.y(), drop);
        }
        double fore = place.hull().height(place.x() - length / 2, place.y());
        double aft = place.hull().height(place.x() + length / 2, place.y());
        if (fore != fore || aft != aft) {
            throw place.offSkin();
        }
        return AxisFrame.levelAthwart(skin, place.x(), place.y(), Math.atan2(aft - fore, length) - drop, 0);
    }

    /** Highest skin along the floor's outline above the frame's plane [m]; NaN where it leaves the skin. */
    private static double edgeRise(AxisFrame frame, BodyOutline floor) {
        double highest = 0;
        Rays rays = new Rays(floor, 12, 0.02, List.of());
        for (int i = 0; i < rays.count(); i++) {
            double rise = frame.outside(rays.u(i), rays.v(i));
            if (!(rise <= highest)) {
                highest = rise;
            }
        }
        return highest;
    }

    /** Bodies, and what stands against them. */
    private void make(PocketBodies bodies) throws CannotBeBuilt {
        solids.add(new NamedSolid("pocket", room));
        solids.add(new NamedSolid("body-in-pocket", BodyEnvelope.of(form.frame(), body, form.face(), form.depth(), form.chord())));
        if (outlineOnly()) {
            return;
        }
        // finished face, lines and former stand without it
        try {
            solids.addAll(layers(bodies));
        } catch (CannotBeBuilt folded) {
            notMade.add("the laminate: " + folded.getMessage());
        }
        former(bodies);
    }

    private List<NamedSolid> layers(PocketBodies bodies) throws CannotBeBuilt {
        PocketLayup layup = make.layup();
        if (layup.layers().isEmpty()) {
            return form.thickness() > 0 ? List.of(new NamedSolid("pocket-laminate", bodies.layer(0, form.thickness()))) : List.of();
        }
        List<NamedSolid> layers = new ArrayList<>();
        double behind = 0;
        if (layup.gelcoat() > 0) {
            layers.add(new NamedSolid("pocket-gelcoat", bodies.layer(0, layup.gelcoat())));
            behind = layup.gelcoat();
        }
        for (int i = 0; i < layup.layers().size(); i++) {
            double next = behind + layup.layers().get(i).thickness();
            layers.add(new NamedSolid("pocket-layer-" + (i + 1), bodies.layer(behind, next)));
            behind = next;
        }
        return layers;
    }

    private void former(PocketBodies bodies) throws CannotBeBuilt {
        FormerWish wish = make.former();
        boolean boatsOwn = make.into() == Into.NEW_MOLD;
        leastDraft = new Pulls(form, surface, net).require(wish, boatsOwn);
        if (boatsOwn && wish.mold() == Mold.SPLIT_ON_CENTRELINE && place.y() == 0) {
            if (wish.flange() > 0) {
                throw new CannotBeBuilt("a former in two pieces is bolted through its faces on the centreline, and has no rim of "
                    + Lengths.mm(wish.flange()), "a rim of 0.0 mm, or a mold in one piece");
            }
            solids.add(new NamedSolid("pocket-former-starboard", bodies.room(Half.STARBOARD, wish.shrinkage())));
            solids.add(new NamedSolid("pocket-former-port", bodies.room(Half.PORT, wish.shrinkage())));
        } else if (wish.flange() > 0) {
            place.requireSmooth("the former's rim", bodies.rimPlaces(wish.flange()));
            solids.add(new NamedSolid("pocket-former", bodies.formerWithRim(wish.flange(), wish.shrinkage())));
        } else {
            solids.add(new NamedSolid("pocket-former", bodies.room(Half.WHOLE, wish.shrinkage())));
        }
    }

    private boolean outlineOnly() {
        return boat.skin().map(skin -> skin.material().isMetal() || skin.material() == SkinMaterial.PLANKED).orElse(false);
    }

    /** Thickness of the skin there [m], where it is told. */
    private static OptionalDouble skin(BoatTold boat, PocketPlace place) {
        return boat.skin().map(skin -> skin.thicknessAt(place.x(), place.y())).filter(ThicknessHere.Told.class::isInstance).stream()
            .mapToDouble(told -> ((ThicknessHere.Told) told).largest()).findFirst();
    }

    /** Thickness of the pocket's laminate: as told, or the bottom's beside it; 0 where neither is told, and on a skin that is not laminate. */
    private static double laminate(PocketMake make, BoatTold boat, PocketPlace place) throws CannotBeBuilt {
        double bottom = skin(boat, place).orElse(0);
        if (boat.skin().map(skin -> skin.material().isMetal() || skin.material() == SkinMaterial.PLANKED).orElse(false)) {
            return 0;
        }
        double told = make.layup().thickness();
        if (told > 0 && told < bottom - 1e-9) {
            throw new CannotBeBuilt("the pocket's laminate is " + Lengths.mm(told) + " thick, and the bottom beside it " + Lengths.mm(bottom),
                "a laminate of " + Lengths.mmUp(bottom) + " or more");
        }
        return told > 0 ? told : bottom;
    }

    private boolean isCut() {
        return make.into() == Into.EXISTING_BOAT && form.thickness() > 0;
    }

    /** Where an existing hull is cut through for a tray, given the opening laid flat; empty where it is not known. */
    private List<FlatPoint> hullCut(List<FlatPoint> opening) {
        return isCut() ? PocketLines.outside(opening, form.thickness() + make.layup().trayGap()) : List.of();
    }

    /**
     * Makes the skin round the pocket, which stands with or without.
     *
     * @param opening laid flat
     * @param plan where a flat point lies on the skin, seen along the frame's axis
     */
    public void cutSkin(List<FlatPoint> opening, UnaryOperator<FlatPoint> plan) {
        OptionalDouble thickness = skin(boat, place);
        if (outlineOnly()) {
            return;
        }
        if (thickness.isEmpty()) {
            notMade.add("the hull's skin: its thickness here is not told; what works: tell it as skin in the job");
            return;
        }
        LocalSkin skin = new LocalSkin(place, form, surface, thickness.getAsDouble());
        try {
            solids.add(new NamedSolid("skin-round-pocket", make.into() == Into.NEW_MOLD ? skin.molded()
                : skin.cutThrough((isCut() ? hullCut(opening) : opening).stream().map(plan).toList())));
        } catch (CannotBeBuilt refusal) {
            notMade.add("the hull's skin: " + refusal.getMessage());
        }
    }

    /** How it is made and what it costs, given the opening laid flat. */
    public PocketDetails details(List<FlatPoint> opening) throws CannotBeBuilt {
        boolean cut = isCut();
        List<FlatPoint> hullCut = hullCut(opening);
        List<FlatPoint> taper = cut ? PocketLines.outside(opening, form.thickness() + make.layup().trayGap() + make.layup().scarf() * form.thickness())
            : List.of();
        double bodyVolume = BodyOutline.of(body).area() * body.height();
        Vector3D crest = crest();
        double drains = new Pulls(form, surface, net).plumb();
        return new PocketDetails(make, body.height() > 0 ? gapAtFace() : 0, form.thickness(), steepest(), hullCut, taper,
            cut ? PocketLines.area(hullCut) : openingArea, room.volume() - bodyVolume, met(), Math.max(0, crest.getZ() - rim()), crest,
            body.stemDiameter() > 0 ? StemHole.diameter(body.stemDiameter()) : 0, leastDraft, drains > 0,
            hull().within() + INSERT + PAINT, notMade, outlineOnly());
    }

    private Hull hull() {
        return place.hull();
    }

    /** From the body to the wall at the height of the face, in the middle of its sides. */
    private double gapAtFace() {
        return (length() - body.length()) / 2 + form.walls().run(form.depth() - form.face());
    }

    private Angle steepest() {
        return Angle.ofRadians(Math.atan(Blend.PEAK * surface.steepest()));
    }

    /** The highest place of the face's surroundings, where air gathers; what lies higher is filled by body and bedding. */
    private Vector3D crest() {
        Vector3D highest = opening().get(0);
        for (int ring = surface.mouthRing(); ring < surface.rings(); ring++) {
            for (Vector3D place : ring(ring)) {
                highest = place.getZ() > highest.getZ() ? place : highest;
            }
        }
        return highest;
    }

    /** Height of the highest place of the opening, over which air runs out. */
    private double rim() {
        return opening().stream().mapToDouble(Vector3D::getZ).max().orElseThrow();
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

    PocketForm form() {
        return form;
    }

    PocketSurface surface() {
        return surface;
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
        return extreme(0, -1) - length() / 2;
    }

    public double aftRamp() {
        return extreme(0, 1) - length() / 2;
    }

    /** How far the opening reaches, along (0) or across (1), in a direction [m]. */
    double extreme(int axis, int sign) {
        double most = Double.NEGATIVE_INFINITY;
        for (int ray = 0; ray < surface.rays().count(); ray++) {
            most = Math.max(most, sign * net[at(ray, surface.rings() - 1) + axis]);
        }
        return most;
    }

    private int at(int ray, int ring) {
        return 3 * (surface.rings() * ray + ring);
    }

    /** Outline of the floor. */
    public List<Vector3D> floor() {
        return ring(0);
    }

    /** Where the walls end, on the face's surroundings or on the skin. */
    public List<Vector3D> mouth() {
        return ring(surface.mouthRing());
    }

    /** Where pocket and blends meet the skin. */
    public List<Vector3D> opening() {
        return ring(surface.rings() - 1);
    }

    private List<Vector3D> ring(int ring) {
        List<Vector3D> places = new ArrayList<>();
        int count = surface.rays().count();
        // from forward on the keel, first along starboard, then port
        int first = 0;
        for (int ray = 1; ray < count; ray++) {
            if (surface.rays().alongU(ray) == -1 && (surface.rays().alongU(first) != -1
                    || Math.abs(surface.rays().v(ray)) < Math.abs(surface.rays().v(first)))) {
                first = ray;
            }
        }
        for (int i = 0; i < count; i++) {
            int at = at((first - i + count) % count, ring);
            places.add(form.frame().toHull(net[at], net[at + 1], net[at + 2]));
        }
        return places;
    }

    public double volume() {
        return room.volume();
    }

    /** Of skin inside the opening [m2]. */
    public double openingArea() {
        return openingArea;
    }

    public List<PocketSection> sections() {
        return new PocketSections(this, net).all();
    }

    public List<NamedSolid> solids() {
        return List.copyOf(solids);
    }
}
