package org.garboard.exchange;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the known word that a misspelt one was meant to be. */
public final class Spelling {

    private Spelling() {
    }

    /** The nearest known word, if it is near enough: a third of its letters may be wrong. */
    public static Optional<String> meant(String found, Collection<String> known) {
        String nearest = null;
        int least = Integer.MAX_VALUE;
        for (String word : known) {
            int changes = changes(found.toLowerCase(Locale.ROOT), word.toLowerCase(Locale.ROOT));
            if (changes < least && changes <= Math.max(1, word.length() / 3)) {
                least = changes;
                nearest = word;
            }
        }
        return Optional.ofNullable(nearest);
    }

    /**
     * Letters to add, drop or replace to get from one word to the other.
     *
     * @see "V. I. Levenshtein, Binary codes capable of correcting deletions, insertions, and
     *     reversals, Soviet Physics Doklady 10(8), 1966, pp. 707-710; from memory"
     */
    private static int changes(String from, String to) {
        int[] row = new int[to.length() + 1];
        for (int j = 0; j <= to.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= from.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= to.length(); j++) {
                int replaced = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(replaced, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[to.length()];
    }
}
