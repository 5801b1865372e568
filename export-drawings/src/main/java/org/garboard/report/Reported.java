package org.garboard.report;

import java.util.List;
import org.garboard.drawing.heat.HeatPanel;
import org.garboard.job.SitingRecord;

/**
 * What was decided for one transducer, as a report tells it.
 *
 * @param decided the decision
 * @param toCut what the yard has to know beside the sheets, sentences
 * @param heat how well the bottom serves the advised mount, and what governs where; empty where no mount finds a seat
 */
public record Reported(SitingRecord decided, List<String> toCut, List<HeatPanel> heat) {
    public Reported {
        toCut = List.copyOf(toCut);
        heat = List.copyOf(heat);
    }
}
