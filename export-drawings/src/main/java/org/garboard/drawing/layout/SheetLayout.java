package org.garboard.drawing.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.drawing.Box;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Scale;
import org.garboard.drawing.Sheet;
import org.garboard.drawing.View;

/** Sets out a sheet: frame, title block, print check, then piece by piece. */
public final class SheetLayout {

    /** Clear space inside the frame's line [mm]. */
    private static final double INSET = 6;
    private static final double BAR_ABOVE_BLOCK = 3;

    private final Paper paper;
    private final Lettering lettering;
    private final List<Entity> furniture = new ArrayList<>();
    private final FreeSpace space;

    /** @throws DoesNotFit when the title block cannot hold its values */
    public SheetLayout(Paper paper, Lettering lettering, TitleBlock titleBlock) {
        this.paper = paper;
        this.lettering = lettering;
        Box frame = paper.frame();
        furniture.addAll(SheetFrame.of(paper));
        Box block = add(TitleBlockDrawing.of(titleBlock), frame.right(), frame.bottom());
        Box bar = add(PrintCheck.bar(), block.left(), block.top() + BAR_ABOVE_BLOCK);
        space = new FreeSpace(frame.grownBy(-INSET), lettering.gap()).without(block).without(bar);
    }

    private Box add(List<Entity> entities, double dx, double dy) {
        Cluster moved = Cluster.of(entities).movedBy(dx, dy);
        furniture.addAll(moved.loose());
        return moved.bounds();
    }

    /** The sheet with all pieces set; empty when they find no room. */
    public Optional<Sheet> set(String title, String description, Scale scale, List<Piece> pieces) {
        return Packing.of(pieces, space).map(placed -> sheet(title, description, scale, placed));
    }

    private Sheet sheet(String title, String description, Scale scale, List<Cluster> placed) {
        List<View> views = new ArrayList<>();
        List<Entity> loose = new ArrayList<>(furniture);
        for (Cluster cluster : placed) {
            views.addAll(cluster.views());
            loose.addAll(cluster.loose());
        }
        return new Sheet(title, description, paper.width(), paper.height(), scale, lettering.figures(), views, loose);
    }
}
