package org.garboard.craft;

/** How the bottom's skin is built up, outside to inside. Lengths [m]. */
public sealed interface SkinBuild permits SkinBuild.OneMaterial, SkinBuild.Cored {

    /** From outside to inside. */
    double thickness();

    /** Solid laminate, plank or plate. */
    record OneMaterial(double thickness) implements SkinBuild {
        public OneMaterial {
            require("skin", thickness);
        }
    }

    /** Two skins with a core between them. */
    record Cored(double outer, double core, double inner) implements SkinBuild {
        public Cored {
            require("outer skin", outer);
            require("core", core);
            require("inner skin", inner);
        }

        @Override
        public double thickness() {
            return outer + core + inner;
        }
    }

    private static void require(String what, double thickness) {
        if (!(thickness > 0 && thickness <= 1)) {
            throw new IllegalArgumentException(what + " of " + thickness + " m; its thickness is more than 0 and at most 1 m");
        }
    }
}
