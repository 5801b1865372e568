package org.garboard.cutout.part;

import java.util.Optional;
import java.util.OptionalDouble;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.Lengths;
import org.garboard.skin.Layup;

/**
 * What is asked of a way through the skin. Lengths [m].
 *
 * @param skin its build; without it only what does not depend on it is made
 * @param gap bedding between body and what it sits in, each side
 * @param overlap of the backing block beyond the cutout
 * @param block least thickness of the backing block
 * @param stemLength of the stem above the body's top, where it is told
 * @param sleeve wall of a plastic sleeve that keeps metal from metal, 0 for none
 * @param chord by which meshes and outlines may stray from true
 */
public record ThroughHullWish(Optional<Layup> skin, double gap, double overlap, double block,
                              OptionalDouble stemLength, double sleeve, double chord) {
    /** Bedding a side: common practice, no source. */
    public static final double GAP = 0.0025;
    /** Our choice: 10 mm less than the landing that sites keep clear. */
    public static final double OVERLAP = 0.040;
    /** Our choice: what a nut can be drawn up against without the block bending. */
    public static final double BLOCK = 0.015;
    public static final double CHORD = 1e-4;
    /** Nut and washer on the stem: our choice, a thin nut with two threads showing. */
    public static final double NUT = 0.020;
    private static final double FINEST = 1e-5;
    private static final double COARSEST = 1e-3;
    private static final double MOST = 1;

    public ThroughHullWish {
        require("bedding gap", gap, 0);
        require("overlap of the backing block", overlap, 1e-9);
        require("thickness of the backing block", block, 1e-9);
        require("wall of a sleeve", sleeve, 0);
        require("chord error", chord, 1e-9);
        stemLength.ifPresent(length -> require("stem length", length, 0));
    }

    /** Without a sleeve. */
    public ThroughHullWish(Optional<Layup> skin, double gap, double overlap, double block, OptionalDouble stemLength, double chord) {
        this(skin, gap, overlap, block, stemLength, 0, chord);
    }

    /** The defaults. */
    public static ThroughHullWish of(Optional<Layup> skin) {
        return new ThroughHullWish(skin, GAP, OVERLAP, BLOCK, OptionalDouble.empty(), CHORD);
    }

    /**
     * The same in a skin, with a stem.
     *
     * @param build of the skin, where it is known
     * @param stem its length above the body's top [m], where it is told
     */
    public ThroughHullWish in(Optional<Layup> build, OptionalDouble stem) {
        return new ThroughHullWish(build, gap, overlap, block, stem, sleeve, chord);
    }

    /** The same with a sleeve of that wall [m]. */
    public ThroughHullWish sleeved(double wall) {
        return new ThroughHullWish(skin, gap, overlap, block, stemLength, wall, chord);
    }

    private static void require(String what, double value, double least) {
        if (!(value >= least && value <= MOST)) {
            throw new IllegalArgumentException(what + " of " + value + " m; it must be from " + least + " to " + MOST + " m");
        }
    }

    /** Whether meshes can be made to the chord error and the block is thick enough to be made. */
    public void check() throws CannotBeBuilt {
        checkChord(chord);
        if (block < 0.005) {
            throw new CannotBeBuilt("a backing block " + Lengths.mm(block) + " thick bends under its nut", "5.0 mm or more");
        }
        if (overlap < 0.010) {
            throw new CannotBeBuilt("a backing block that overlaps the cutout by " + Lengths.mm(overlap) + " does not carry it",
                "10.0 mm or more");
        }
    }

    /** Whether meshes can be made to a chord error [m]. */
    public static void checkChord(double chord) throws CannotBeBuilt {
        if (!(chord >= FINEST && chord <= COARSEST)) {
            throw new CannotBeBuilt("a chord error of " + chord * 1000 + " mm",
                "from 0.01 mm to 1 mm; " + (chord < FINEST ? "0.01" : "1") + " mm is nearest");
        }
    }

    /** Whether the stem reaches through its nut. */
    public void checkStem(double needed) throws CannotBeBuilt {
        if (stemLength.isPresent() && stemLength.getAsDouble() < needed - 1e-9) {
            throw new CannotBeBuilt("the stem is " + Lengths.mm(stemLength.getAsDouble()) + " long above the body; through block, washer and nut it needs "
                + Lengths.mm(needed), "a stem of " + Lengths.mmUp(needed) + " or more, or thinner skin and block");
        }
    }
}
