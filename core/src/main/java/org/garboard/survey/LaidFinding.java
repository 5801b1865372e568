package org.garboard.survey;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A finding laid on its hull.
 *
 * @param finding as told
 * @param x along the boat [m]; none of a region that is meant as a whole
 * @param spots where it is marked: one, or one on each side; none for what is said of the whole boat
 */
public record LaidFinding(SurveyFinding finding, OptionalDouble x, List<Spot> spots) {
    public LaidFinding {
        spots = List.copyOf(spots);
    }
}
