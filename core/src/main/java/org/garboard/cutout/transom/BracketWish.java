package org.garboard.cutout.transom;

import java.util.List;
import java.util.Optional;
import org.garboard.craft.Transducer;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.Lengths;
import org.garboard.cutout.part.ThroughHullWish;
import org.garboard.skin.SkinMaterial;

/**
 * What is asked of a transom mount. Lengths [m].
 *
 * @param drop how far the level face hangs below the bottom where the bottom comes lowest over it
 * @param screws of the maker's bracket; empty for two of our own choice
 * @param board thickness of the board between transom and bracket
 * @param chord by which meshes and outlines may stray from true
 */
public record BracketWish(double drop, List<Screw> screws, double board, double chord) {
    /** Below a laminate, wooden or unknown bottom: common practice, no source (an eighth of an inch). */
    public static final double DROP = 0.003;
    /** Below a bottom of plate, whose seams and rivets stir the water: common practice, no source (three eighths of an inch). */
    public static final double DROP_BELOW_PLATE = 0.010;
    /** Our choice: a plastic board that takes the screws, so that few holes go into the transom. */
    public static final double BOARD = 0.012;
    private static final double MOST_DROP = 0.050;
    private static final double THINNEST_BOARD = 0.003;
    private static final double THICKEST_BOARD = 0.050;
    private static final double PILOT = 0.004;
    private static final double OVER_BODY = 0.040;
    private static final double SPREAD = 0.3;

    public BracketWish {
        screws = List.copyOf(screws);
    }

    /**
     * A screw of the bracket.
     *
     * @param across from the bracket's middle, to starboard
     * @param aboveFace along the transom, over the level of the transducer's face
     * @param diameter of the pilot hole
     */
    public record Screw(double across, double aboveFace, double diameter) {
    }

    /** The defaults for a bottom of a material. */
    public static BracketWish of(Optional<SkinMaterial> bottom) {
        return of(bottom, BracketTold.NOTHING, ThroughHullWish.CHORD);
    }

    /** As told, and the defaults for a bottom of a material where nothing is. */
    public static BracketWish of(Optional<SkinMaterial> bottom, BracketTold told, double chord) {
        double usual = bottom.filter(SkinMaterial::isMetal).isPresent() ? DROP_BELOW_PLATE : DROP;
        return new BracketWish(told.below().orElse(usual), told.screws(), BOARD, chord);
    }

    /** Those of the bracket, or two over the body: our choice. */
    List<Screw> screwsFor(Transducer body) {
        if (!screws.isEmpty()) {
            return screws;
        }
        double out = Math.max(0.02, SPREAD * body.width());
        double up = body.height() + OVER_BODY;
        return List.of(new Screw(-out, up, PILOT), new Screw(out, up, PILOT));
    }

    /** Whether it can be made, wherever it goes. */
    void check() throws CannotBeBuilt {
        ThroughHullWish.checkChord(chord);
        between("a face " + Lengths.mm(drop) + " below the bottom", drop, 0, MOST_DROP);
        between("a board " + Lengths.mm(board) + " thick", board, THINNEST_BOARD, THICKEST_BOARD);
        for (Screw one : screws) {
            between("a pilot hole of " + Lengths.mm(one.diameter()), one.diameter(), 0.001, 0.020);
            for (Screw other : screws) {
                double apart = Math.hypot(one.across() - other.across(), one.aboveFace() - other.aboveFace());
                double least = 1.5 * (one.diameter() + other.diameter());
                if (one != other && apart < least) {
                    throw new CannotBeBuilt("two screws of the bracket stand " + Lengths.mm(apart) + " apart", Lengths.mmUp(least) + " or more");
                }
            }
        }
    }

    private static void between(String what, double value, double least, double most) throws CannotBeBuilt {
        if (!(value >= least - 1e-9 && value <= most + 1e-9)) {
            throw new CannotBeBuilt(what, Lengths.mm(value < least ? least : most) + "; from " + Lengths.mm(least) + " to " + Lengths.mm(most));
        }
    }
}
