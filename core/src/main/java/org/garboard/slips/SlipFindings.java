package org.garboard.slips;

import java.util.List;

/** What came of looking for slips. */
public sealed interface SlipFindings permits SlipFindings.Searched, SlipFindings.NotSearched {

    /**
     * Every cell was compared with the others.
     *
     * @param slips likely slips, row by row as the table has them
     */
    record Searched(List<Slip> slips) implements SlipFindings {
        public Searched {
            slips = List.copyOf(slips);
        }
    }

    /**
     * The table tells too little, or is too large.
     *
     * @param reason to follow "slips were not looked for: "
     */
    record NotSearched(String reason) implements SlipFindings {
    }
}
