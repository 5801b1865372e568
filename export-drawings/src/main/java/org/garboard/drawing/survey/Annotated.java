package org.garboard.drawing.survey;

import java.util.List;
import org.garboard.drawing.sheets.Provenance;
import org.garboard.hull.Hull;
import org.garboard.job.RecordedSet;
import org.garboard.offsets.HullOffsets;
import org.garboard.survey.LaidFinding;

/**
 * An earlier set, and what a surveyor found on its boat.
 *
 * @param set as its record tells it
 * @param table from which its hull is drawn
 * @param hull that was drawn from it
 * @param findings laid on the hull
 * @param source name of their file, and the beginning of its hash
 * @param provenance for the title block
 */
public record Annotated(RecordedSet set, HullOffsets table, Hull hull, List<LaidFinding> findings, String source, Provenance provenance) {
    public Annotated {
        findings = List.copyOf(findings);
    }
}
