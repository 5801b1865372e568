package org.garboard.craft;

/** What a transducer's housing or its through-hull fitting is made of. */
public enum Housing {
    PLASTIC("plastic"),
    BRONZE("bronze"),
    STAINLESS_STEEL("stainless steel");

    private final String words;

    Housing(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    public boolean isMetal() {
        return this != PLASTIC;
    }
}
