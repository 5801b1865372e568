package org.garboard.cutout.pocket;

import java.util.List;
import org.garboard.craft.Transducer;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.Lengths;
import org.garboard.cutout.part.Bend;
import org.garboard.cutout.part.BodyOutline;
import org.garboard.cutout.skin.AxisFrame;
import org.garboard.cutout.skin.HullSkin;
import org.garboard.mount.PocketWish;
import org.garboard.mount.pocket.Floor;
import org.garboard.mount.pocket.PocketMake;

/**
 * The figures of a pocket set out at a place.
 *
 * @param form of it
 * @param edgeRise highest skin along the floor's outline over its frame's plane [m]
 */
record PocketSetting(PocketForm form, double edgeRise) {
    /** A face this little proud of the skin is flush [m]; our choice, less than a coat of paint. */
    private static final double FLUSH = 1e-4;

    static PocketSetting at(PocketPlace place, Transducer body, PocketWish wish, BoatTold boat) throws CannotBeBuilt {
        PocketMake make = wish.make();
        BodyOutline floor = floor(body, wish);
        AxisFrame frame = frame(place, make.floor(), floor.length());
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
        double bent = Bend.under(frame, floor.loop(make.chord(), 0.1)).step(make.chord(), 0);
        PocketForm form = new PocketForm(frame, floor, depth, depth - body.height(), make.walls(), wish.endRatio(), wish.sideRatio(),
            place.creases(frame), laminate(make, boat, place), make.chord(), bent);
        place.requireCreasesInEnds(form);
        place.requireRampsOnTable(form);
        return new PocketSetting(form, edgeRise);
    }

    /** The body's outline and the gap round it. */
    static BodyOutline floor(Transducer body, PocketWish wish) throws CannotBeBuilt {
        double length = body.length() + 2 * wish.gap();
        double width = body.width() + 2 * wish.gap();
        double radius = body.cornerRadius() > 0 ? body.cornerRadius() + wish.gap() : 0;
        PocketLimits.corner(radius, wish.gap(), Math.min(length, width));
        return new BodyOutline(length, width, radius);
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

    /** Thickness of the pocket's laminate: as told, or the bottom's beside it; 0 where neither is told, and on a skin that is not laminate. */
    private static double laminate(PocketMake make, BoatTold boat, PocketPlace place) throws CannotBeBuilt {
        double bottom = boat.thicknessAt(place.x(), place.y()).orElse(0);
        if (boat.outlineOnly()) {
            return 0;
        }
        double told = make.layup().thickness();
        if (told > 0 && told < bottom - 1e-9) {
            throw new CannotBeBuilt("the pocket's laminate is " + Lengths.mm(told) + " thick, and the bottom beside it " + Lengths.mm(bottom),
                "a laminate of " + Lengths.mmUp(bottom) + " or more");
        }
        return told > 0 ? told : bottom;
    }
}
