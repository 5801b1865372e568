package org.garboard.mount;

/** What a check says. NOT_KNOWN never counts as met. */
public enum Verdict {
    MET("met"), NOT_MET("not met"), NOT_KNOWN("NOT KNOWN");

    private final String words;

    Verdict(String words) {
        this.words = words;
    }

    /** As it stands on sheets and in tables. */
    public String words() {
        return words;
    }
}
