package org.garboard.units;

/** The dashes that word processors and typesetters put where a hyphen was typed. */
final class Dashes {

    private Dashes() {
    }

    /** The text with hyphens, minus signs and en dashes of Unicode as the plain hyphen. */
    static String plain(String text) {
        return text.replace('\u2010', '-').replace('\u2011', '-').replace('\u2013', '-').replace('\u2212', '-')
            .replace('\u00a0', ' ');
    }
}
