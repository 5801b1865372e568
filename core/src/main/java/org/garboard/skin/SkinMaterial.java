package org.garboard.skin;

/** What the bottom is built of. */
public enum SkinMaterial {
    SOLID_GLASS("solid glass laminate"),
    CORED_GLASS("cored glass laminate"),
    CARBON("carbon laminate"),
    PLANKED("planked wood"),
    PLYWOOD("plywood"),
    ALUMINIUM("aluminium"),
    STEEL("steel");

    private final String words;

    SkinMaterial(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    public boolean isMetal() {
        return this == ALUMINIUM || this == STEEL;
    }
}
