package org.garboard.tablefile;

import java.util.Optional;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.PanelName;
import org.garboard.offsets.SkinSurface;

/** What the headings say of the surface to which the table is drawn. */
final class SurfaceHeading {
    private final Problems problems;
    private final Thicknesses thicknesses;
    private Optional<Surfaces> surface = Optional.empty();
    private Optional<Cell> cell = Optional.empty();

    SurfaceHeading(Problems problems) {
        this.problems = problems;
        this.thicknesses = new Thicknesses(problems);
    }

    boolean isGiven() {
        return surface.isPresent();
    }

    Thicknesses thicknesses() {
        return thicknesses;
    }

    void read(Cell from, Surfaces found) {
        if (surface.isPresent() && surface.get() != found) {
            problems.inCell(from, "", "", "is a second surface; a table is drawn to one");
        } else if (surface.isEmpty() && found == Surfaces.MOULDED) {
            problems.inCell(from, "", "", Surfaces.MOULDED_REFUSED);
        }
        String thickness = found.thickness(from.text());
        if (!thickness.isEmpty()) {
            thicknesses.everywhere(new Cell(from.row(), from.column(), thickness));
        }
        surface = Optional.of(found);
        cell = Optional.of(from);
    }

    /** A level and a tape reach the outside alone. */
    void refuseInside() {
        if (surface.isPresent() && surface.get().covering().isPresent()) {
            problems.inCell(cell.get(), "", "", "is not what a tape on the boat measures; a take-off is to outside of skin");
        }
        thicknesses.refuseAll();
    }

    /** The surface, once the table's lines are known; the outside where something is wrong, which has been told. */
    SkinSurface of(Lengths lengths, OffsetTable table) {
        if (surface.isPresent() && surface.get() == Surfaces.OUTSIDE) {
            thicknesses.refuseAll();
        }
        return surface.flatMap(Surfaces::covering)
            .flatMap(covering -> thicknesses.read(lengths, PanelName.of(table), cell.get())
                .<SkinSurface>map(thickness -> new SkinSurface.Inside(covering, thickness)))
            .orElse(SkinSurface.OUTSIDE_OF_SKIN);
    }
}
