package org.garboard.skin;

/** How thick the skin is at a place, as far as is told. */
public sealed interface ThicknessHere {

    /**
     * Told. Never a mean: the largest serves where something must reach through, the smallest where it must hold.
     *
     * @param largest [m]
     * @param smallest [m]
     * @param by "3 readings within 300 mm", "the layup"
     */
    record Told(double largest, double smallest, String by) implements ThicknessHere {
    }

    /**
     * A skin told to be solid reads much thinner than it was built: a gauge sees the outer skin of a core alone.
     *
     * @param reading the smallest near [m]
     * @param layup as built [m]
     */
    record CoreSuspected(double reading, double layup) implements ThicknessHere {
    }

    /** @param reason and what to do, a sentence */
    record Untold(String reason) implements ThicknessHere {
    }
}
