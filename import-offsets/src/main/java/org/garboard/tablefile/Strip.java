package org.garboard.tablefile;

import java.util.List;
import java.util.Optional;
import org.garboard.offsets.Measure;

/**
 * A row of the table, or a column where stations stand in rows.
 *
 * @param label the cell that names it
 * @param block the block it stands in; none above the first block heading
 * @param cells one for each station, fewer if the file has fewer
 */
record Strip(Cell label, Optional<Measure> block, List<Cell> cells) {
    Strip {
        cells = List.copyOf(cells);
    }
}
