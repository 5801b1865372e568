package org.garboard.cutout.inhull;

import java.util.Optional;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.part.ThroughHullWish;
import org.garboard.mount.InHull;
import org.garboard.skin.Layup;
import org.garboard.units.Angle;

/**
 * What is asked of a bath. Lengths [m].
 *
 * @param skin its build; without it the bath is scribed to the outside, and what depends on the thickness is not made
 * @param wall thickness of the bath's wall
 * @param heel angle either way to which the bath stands full and does not spill
 * @param chord by which meshes and outlines may stray from true
 */
public record BathWish(Optional<Layup> skin, double wall, Angle heel, double chord) {
    /** Our choice: what a ring sawn from board or laid up of laminate is thick. */
    public static final double WALL = 0.010;
    /** Our choice: pitch and roll of a boat under way, seldom more. */
    public static final double HEEL_DEG = 15;
    private static final double THINNEST = 0.002;
    private static final double MOST_HEEL_DEG = 30;

    /** The defaults. */
    public static BathWish of(Optional<Layup> skin) {
        return new BathWish(skin, WALL, Angle.ofDegrees(HEEL_DEG), ThroughHullWish.CHORD);
    }

    /** Liquid between body and wall. */
    double room() {
        return InHull.BATH - wall;
    }

    void check() throws CannotBeBuilt {
        ThroughHullWish.checkChord(chord);
        if (!(wall >= THINNEST && wall <= InHull.BATH / 2)) {
            throw new CannotBeBuilt("a wall of the bath " + wall * 1000 + " mm thick", (wall < THINNEST ? "2.0" : "12.5") + " mm; from 2.0 to 12.5 mm");
        }
        if (!(heel.degrees() >= 0 && heel.degrees() <= MOST_HEEL_DEG)) {
            throw new CannotBeBuilt("a bath that stands full to a heel of " + heel.degrees() + " deg",
                (heel.degrees() < 0 ? "0" : "30") + " deg; from 0 to 30 deg");
        }
        if (skin.orElse(null) instanceof Layup.Sandwich) {
            throw new CannotBeBuilt("the skin under the bath is cored, and no sound comes through a core",
                "solid skin: the core taken out under the whole bath and solid laminate laid in its place, told as such");
        }
    }
}
