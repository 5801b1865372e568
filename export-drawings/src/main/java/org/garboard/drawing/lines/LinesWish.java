package org.garboard.drawing.lines;

import java.util.List;
import org.garboard.job.DrawingWish;
import org.garboard.lines.DrawnLine;

/**
 * What a lines drawing shows, and how.
 *
 * @param drawing paper, units, projection and what the title block says
 * @param sections x of the sections [m]; none for the table's stations
 * @param buttocks their distances from the centreline [m]; none for the table's, or even ones where it has none
 * @param waterlines their heights above base [m]; none likewise
 * @param diagonals in the order in which they are numbered
 */
public record LinesWish(DrawingWish drawing, List<Double> sections, List<Double> buttocks, List<Double> waterlines,
                        List<DrawnLine.Diagonal> diagonals) {
    public LinesWish {
        sections = List.copyOf(sections);
        buttocks = List.copyOf(buttocks);
        waterlines = List.copyOf(waterlines);
        diagonals = List.copyOf(diagonals);
    }
}
