package org.garboard.mount.pocket;

/**
 * How a pocket is to be made.
 *
 * @param walls from floor to face
 * @param blend of the sides into the skin
 * @param floor how it lies
 * @param into what it goes
 * @param layup of its laminate
 * @param former that it is laid up on
 * @param approvedBy who approved the structure; empty where nobody is named
 * @param chord by how much solids and outlines may stray from true [m]
 */
public record PocketMake(Walls walls, Blend blend, Floor floor, Into into, PocketLayup layup, FormerWish former,
                         String approvedBy, double chord) {
    public static final double CHORD = 1e-4;
    public static final PocketMake USUAL = new PocketMake(Walls.USUAL, Blend.USUAL, Floor.USUAL, Into.EXISTING_BOAT, PocketLayup.UNTOLD,
        FormerWish.USUAL, "", CHORD);

    /** What the pocket goes into. */
    public enum Into { NEW_MOLD, EXISTING_BOAT }

    /** The same with other walls. */
    public PocketMake with(Walls other) {
        return new PocketMake(other, blend, floor, into, layup, former, approvedBy, chord);
    }

    /** The same with another floor. */
    public PocketMake with(Floor other) {
        return new PocketMake(walls, blend, other, into, layup, former, approvedBy, chord);
    }

    /** The same with other blends. */
    public PocketMake with(Blend other) {
        return new PocketMake(walls, other, floor, into, layup, former, approvedBy, chord);
    }

    /** The same with another laminate. */
    public PocketMake with(PocketLayup other) {
        return new PocketMake(walls, blend, floor, into, other, former, approvedBy, chord);
    }

    /** The same to another chord error. */
    public PocketMake within(double other) {
        return new PocketMake(walls, blend, floor, into, layup, former, approvedBy, other);
    }

    /** The same into something else, by another former. */
    public PocketMake into(Into other, FormerWish by) {
        return new PocketMake(walls, blend, floor, other, layup, by, approvedBy, chord);
    }
}
