package org.garboard.drawing.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.garboard.drawing.Box;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Scale;
import org.garboard.drawing.Sheet;
import org.garboard.drawing.View;

/** Sets out a sheet: frame, title block, print check, then piece by piece. */
public final class SheetLayout {

    /** Clear space inside the frame's line, beyond the centring marks [mm]. */
    private static final double INSET = SheetFrame.MARK + 0.5;
    private static final double BAR_ABOVE_BLOCK = 3;

    /** Ways tried before a scale is given up: our choice, a few tenths of a second at the most. */
    private static final int MOST_TRIALS = 40000;
    /** Ways tried to stand pieces wider apart than they must. */
    private static final int ROOMY_TRIALS = 2000;
    /** How many times the least gap pieces stand apart where there is room: our choice, the largest that does. */
    private static final double[] ROOMY = {4, 3, 2, 1.5};

    private final Paper paper;
    private final Lettering lettering;
    private final List<Entity> furniture = new ArrayList<>();
    private final List<Box> taken;

    public SheetLayout(Paper paper, Lettering lettering, TitleBlock titleBlock) {
        this.paper = paper;
        this.lettering = lettering;
        Box frame = paper.frame();
        furniture.addAll(SheetFrame.of(paper));
        Box block = add(TitleBlockDrawing.of(titleBlock), frame.right(), frame.bottom());
        Box bar = add(PrintCheck.bar(), block.left(), block.top() + BAR_ABOVE_BLOCK);
        taken = List.of(block, bar);
    }

    private FreeSpace space(double gap) {
        FreeSpace space = new FreeSpace(paper.frame().grownBy(-INSET), gap);
        for (Box place : taken) {
            space = space.without(place);
        }
        return space;
    }

    private Box add(List<Entity> entities, double dx, double dy) {
        Cluster moved = Cluster.of(entities).movedBy(dx, dy);
        furniture.addAll(moved.loose());
        return moved.bounds();
    }

    /** The sheet with all pieces set; empty when they find no room. */
    public Optional<Sheet> set(String title, String description, Scale scale, List<Piece> pieces) {
        return Packing.of(pieces, space(lettering.gap()), MOST_TRIALS)
                .map(tight -> sheet(title, description, scale, roomy(pieces, tight).orElse(tight)));
    }

    /**
     * The pieces of each page that they run on to, of paper as this is; empty when one of them finds room on none.
     *
     * @param onEveryPage what each page holds beside
     */
    public Optional<List<List<Piece>>> pages(List<Piece> pieces, List<Piece> onEveryPage) {
        return Paging.of(pieces, onEveryPage, space(lettering.gap()));
    }

    /** The same wider apart, but with no view in a lesser shape. */
    private Optional<List<Cluster>> roomy(List<Piece> pieces, List<Cluster> tight) {
        List<Piece> asGood = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            asGood.add(tight.get(i).views().isEmpty() ? pieces.get(i) : pieces.get(i).downTo(tight.get(i)));
        }
        return Arrays.stream(ROOMY).mapToObj(times -> Packing.of(asGood, space(times * lettering.gap()), ROOMY_TRIALS))
                .flatMap(Optional::stream).findFirst();
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
