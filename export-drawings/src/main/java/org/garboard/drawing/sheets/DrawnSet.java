package org.garboard.drawing.sheets;

import java.util.List;

/**
 * The drawings of a job, and the sheets that had to be refused.
 *
 * @param drawings finished files, in the order of the set
 * @param refusals sheets that are not among them, each with its reason
 */
public record DrawnSet(List<NamedDrawing> drawings, List<SheetRefusal> refusals) {
    public DrawnSet {
        drawings = List.copyOf(drawings);
        refusals = List.copyOf(refusals);
    }
}
