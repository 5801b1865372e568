package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import org.garboard.drawing.View;
import org.garboard.drawing.layout.Cluster;
import org.garboard.drawing.layout.Piece;
import org.garboard.drawing.layout.Piece.Corner;

/**
 * The three views of a part at one scale, with the words beside them.
 *
 * @param plan from below
 * @param lengthwise the long section, in line with the plan where there is room
 * @param athwart the section across
 * @param words tables, legend and notes
 */
record PlanAndSections(View plan, View lengthwise, View athwart, List<Piece> words) {
    /** Where views go. */
    static final List<Corner> CORNERS = List.of(Corner.TOP_LEFT, Corner.BOTTOM_LEFT, Corner.TOP_RIGHT);

    /** Plan and long section in line. */
    List<Piece> inLine(SheetTask task) {
        return pieces(List.of(task.inLine(lengthwise, plan)));
    }

    /** Each by itself, where they do not stand over one another. */
    List<Piece> apart() {
        return pieces(List.of(Cluster.of(plan), Cluster.of(lengthwise)));
    }

    private List<Piece> pieces(List<Cluster> along) {
        List<Piece> pieces = new ArrayList<>();
        along.forEach(views -> pieces.add(new Piece(List.of(views), CORNERS)));
        pieces.add(new Piece(List.of(Cluster.of(athwart)), CORNERS));
        pieces.addAll(words);
        return pieces;
    }
}
