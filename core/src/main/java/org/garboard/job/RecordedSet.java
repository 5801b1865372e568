package org.garboard.job;

import java.util.List;
import org.garboard.craft.BottomFeatures;

/**
 * What an earlier run decided, as its record tells it: all that its sheets show of the siting, without searching again.
 *
 * @param programVersion version of the program that decided
 * @param boat name of the boat or model
 * @param hullNumber builder's hull number, empty when none is told
 * @param tableFile the table of offsets as the job named it
 * @param tableHash of its bytes
 * @param draught height of the floating waterline above base at rest [m]
 * @param features what is on the bottom
 * @param drawing how the sheets are to look
 * @param sitings what was found for each transducer of the job, in its order
 * @param figures everything else that the record tells of inputs, boat, transducers and pockets
 */
public record RecordedSet(String programVersion, String boat, String hullNumber, String tableFile, String tableHash, double draught,
                          BottomFeatures features, DrawingWish drawing, List<RecordedSiting> sitings, List<RecordedFigure> figures) {
    public RecordedSet {
        sitings = List.copyOf(sitings);
        figures = List.copyOf(figures);
    }

    /** The boat with her hull number, as sheets name her. */
    public String named() {
        return hullNumber.isBlank() ? boat : boat + ", hull no. " + hullNumber;
    }
}
