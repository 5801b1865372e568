package org.garboard.mount;

import org.garboard.craft.Transducer;
import org.garboard.craft.TransducerDetails;

/**
 * What goes into the bottom and what the job asks of the way it goes in.
 *
 * @param transducer the body
 * @param details what its maker tells beside its outside
 * @param pocket wishes for a keel pocket; other mounts pass them over
 * @param block the fairing block that holds it; other mounts pass it over
 * @param backing thickness of the block inside [m]
 * @param drop how far a level face behind the transom hangs below the bottom where the bottom comes lowest over it [m]; other mounts
 *     pass it over
 * @param limits what every check is held to
 */
public record Installation(Transducer transducer, TransducerDetails details, PocketWish pocket, BlockSize block, double backing,
                           double drop, Limits limits) {
    /** Block inside that a job does not ask otherwise of [m]: our choice, what a nut can be drawn up against. */
    private static final double BACKING = 0.015;
    /** Of a face behind the transom that a job does not ask otherwise of [m]: common practice, no source. */
    private static final double DROP = 0.003;
    /** A block of usual slenderness [m]: our choice. */
    private static final double WALL = 0.02;
    private static final double SLENDERNESS = 3.5;
    /** Share of its length at which a block is widest; there the body stands. */
    private static final double WIDEST = 0.3;

    /** Of a transducer of which only the outside is told, with the program's own limits. */
    public Installation(Transducer transducer, PocketWish pocket) {
        this(transducer, TransducerDetails.UNTOLD, pocket, block(transducer), BACKING, DROP, Limits.OWN);
    }

    private static BlockSize block(Transducer transducer) {
        double width = Math.max(transducer.width() + 2 * WALL, 2 * transducer.length() / SLENDERNESS);
        double length = SLENDERNESS * width;
        return new BlockSize(length, width, 0.006, 0.010, WIDEST * length - transducer.length() / 2 - WALL / 2, WIDEST * length, 0, Double.NaN);
    }

    /** The same held to other limits. */
    public Installation within(Limits others) {
        return new Installation(transducer, details, pocket, block, backing, drop, others);
    }

    /** The same with what the maker tells. */
    public Installation with(TransducerDetails told) {
        return new Installation(transducer, told, pocket, block, backing, drop, limits);
    }
}
