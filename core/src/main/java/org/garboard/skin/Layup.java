package org.garboard.skin;

import org.garboard.acoustics.laminate.Solid;
import org.garboard.acoustics.laminate.TypicalSolids;

/** How thick the skin was built. Lengths in metres. */
public sealed interface Layup {

    /** From outside to inside [m]. */
    double thickness();

    /** The same stuff all through: laminate, planking, plate. */
    record Whole(double thickness) implements Layup {
        public Whole {
            require("skin", thickness);
        }
    }

    /** A core between two skins. */
    record Sandwich(double outerSkin, Core core, double coreThickness, double innerSkin) implements Layup {
        public Sandwich {
            require("outer skin", outerSkin);
            require("core", coreThickness);
            require("inner skin", innerSkin);
        }

        @Override
        public double thickness() {
            return outerSkin + coreThickness + innerSkin;
        }
    }

    /** What lies between the skins. */
    enum Core {
        FOAM("foam", TypicalSolids.PVC_FOAM),
        BALSA("end-grain balsa", TypicalSolids.BALSA);

        private final String words;
        private final Solid solid;

        Core(String words, Solid solid) {
            this.words = words;
            this.solid = solid;
        }

        public String words() {
            return words;
        }

        /** To sound: typical values. */
        Solid solid() {
            return solid;
        }
    }

    private static void require(String what, double metres) {
        if (!(metres > 0 && metres < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("the " + what + " is " + metres + " m thick; it must be more than 0");
        }
    }
}
