package org.garboard.tablefile;

import java.util.List;
import java.util.Optional;

/**
 * What came of looking for slips in a file.
 *
 * @param slips likely slips, in the order of the table's rows
 * @param notSearched why none were looked for, to follow "slips were not looked for: "
 */
public record SlipReport(List<LikelySlip> slips, Optional<String> notSearched) {
    public SlipReport {
        slips = List.copyOf(slips);
    }
}
