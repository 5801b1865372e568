package org.garboard.cutout.pocket;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.garboard.craft.Transducer;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.FlatPoint;
import org.garboard.cutout.Lengths;
import org.garboard.cutout.part.BodyEnvelope;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.cutout.pocket.PocketBodies.Half;
import org.garboard.mount.pocket.FormerWish;
import org.garboard.mount.pocket.FormerWish.Mold;
import org.garboard.mount.pocket.PocketLayup;
import org.garboard.mount.pocket.PocketMake;
import org.garboard.mount.pocket.PocketMake.Into;
import org.garboard.solid.Solid;
import org.garboard.units.Angle;

/** The solids that a pocket is made of and milled to, and which of them are not made, and why. */
final class PocketParts {
    private final PocketPlace place;
    private final BoatTold boat;
    private final PocketMake make;
    private final PocketForm form;
    private final PocketSurface surface;
    private final PocketBodies bodies;
    private final Solid room;
    private final double openingArea;
    private final List<NamedSolid> solids = new ArrayList<>();
    private final List<String> notMade = new ArrayList<>();
    private Angle leastDraft = Angle.ofRadians(0);

    PocketParts(PocketPlace place, BoatTold boat, PocketMake make, PocketForm form, PocketSurface surface) throws CannotBeBuilt {
        this.place = place;
        this.boat = boat;
        this.make = make;
        this.form = form;
        this.surface = surface;
        this.bodies = new PocketBodies(form, surface);
        this.room = bodies.room(Half.WHOLE, 0);
        this.openingArea = bodies.openingArea();
    }

    /** Makes them; finished face, lines and former stand without the laminate. */
    void make(Transducer body) throws CannotBeBuilt {
        solids.add(new NamedSolid("pocket", room));
        solids.add(new NamedSolid("body-in-pocket", BodyEnvelope.of(form.frame(), body, form.face(), form.depth(), form.chord())));
        if (boat.outlineOnly()) {
            return;
        }
        try {
            solids.addAll(layers());
        } catch (CannotBeBuilt folded) {
            notMade.add("the laminate: " + folded.getMessage());
        }
        former();
    }

    private List<NamedSolid> layers() throws CannotBeBuilt {
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

    private void former() throws CannotBeBuilt {
        FormerWish wish = make.former();
        boolean boatsOwn = make.into() == Into.NEW_MOLD;
        double reach = form.floor().width() / 2;
        if (boatsOwn && wish.mold() == Mold.SPLIT_ON_CENTRELINE && place.y() != 0 && Math.abs(place.y()) < reach) {
            throw new CannotBeBuilt("the mold parts on the centreline, which runs " + Lengths.mm(Math.abs(place.y())) + " beside the pocket's middle",
                "a middle on the centreline, one more than " + Lengths.mmUp(reach) + " aside, or a mold in one piece");
        }
        leastDraft = new Pulls(form, surface, surface.net()).require(wish, boatsOwn);
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

    /**
     * Makes the skin round the pocket, which stands with or without.
     *
     * @param cut through the skin of an existing boat, as seen along the frame's axis
     */
    void cutSkin(List<FlatPoint> cut) {
        OptionalDouble thickness = boat.thicknessAt(place.x(), place.y());
        if (boat.outlineOnly()) {
            return;
        }
        if (thickness.isEmpty()) {
            notMade.add("the hull's skin: its thickness here is not told; what works: tell it as skin in the job");
            return;
        }
        LocalSkin skin = new LocalSkin(place, form, surface, thickness.getAsDouble());
        try {
            solids.add(new NamedSolid("skin-round-pocket", make.into() == Into.NEW_MOLD ? skin.molded()
                : skin.cutThrough(cut)));
        } catch (CannotBeBuilt refusal) {
            notMade.add("the hull's skin: " + refusal.getMessage());
        }
    }

    /** What is taken out of the boat. */
    Solid room() {
        return room;
    }

    /** Of skin inside the opening [m2]. */
    double openingArea() {
        return openingArea;
    }

    List<NamedSolid> solids() {
        return List.copyOf(solids);
    }

    List<String> notMade() {
        return List.copyOf(notMade);
    }

    /** Least draft of any face of the former. */
    Angle leastDraft() {
        return leastDraft;
    }
}
