package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import org.garboard.drawing.Scale;
import org.garboard.drawing.layout.Piece;
import org.garboard.drawing.layout.Piece.Corner;

/** Sheet 5: the blocks of a through-hull, as they are sawn, scribed and bored. */
final class BlockSheet implements SheetContent {
    /** A block drawn shorter than this [mm] shows no holes: our choice. */
    private static final double SHORTEST = 60;
    private static final List<Corner> NOTES = List.of(Corner.BOTTOM_RIGHT, Corner.TOP_RIGHT, Corner.BOTTOM_LEFT, Corner.TOP_LEFT);
    private static final List<Corner> TABLES = List.of(Corner.TOP_RIGHT, Corner.BOTTOM_LEFT, Corner.TOP_LEFT, Corner.BOTTOM_RIGHT);

    private final SheetTask task;
    private final BlockTask block;
    private final List<Piece> words = new ArrayList<>();

    BlockSheet(SheetTask task) {
        this.task = task;
        this.block = BlockTask.of(task);
        BlockTables tables = new BlockTables(block);
        words.add(tables.saw(TABLES));
        if (!block.rows().isEmpty()) {
            words.add(tables.heights(TABLES));
        }
        words.add(new Piece(List.of(CutParts.legend(task)), PlanAndSections.CORNERS));
        words.add(Cautions.of(task.table()).piece(task.lettering(), NOTES));
        words.add(tables.notes().piece(task.lettering(), NOTES));
    }

    @Override
    public int number() {
        return 5;
    }

    @Override
    public String title() {
        return "Blocks";
    }

    @Override
    public String documentType() {
        return "Part drawing";
    }

    @Override
    public String description() {
        return "The " + block.name() + " seen from below with bow to the right and starboard up, long section from starboard, section at the stem "
                + "looking forward; saw cut and heights.";
    }

    @Override
    public double longest() {
        return block.length();
    }

    @Override
    public double shortestDrawn() {
        return SHORTEST;
    }

    @Override
    public List<Piece> onEveryPage() {
        return List.of(Cautions.brief().piece(task.lettering(), NOTES));
    }

    @Override
    public List<List<Piece>> arrangements(Scale scale) {
        return List.of(views(scale).inLine(task));
    }

    @Override
    public List<List<Piece>> runningOn(Scale scale) {
        return List.of(views(scale).inLine(task), views(scale).apart());
    }

    private PlanAndSections views(Scale scale) {
        return new PlanAndSections(BlockPlanView.of(block, scale), BlockSectionView.lengthwise(block, scale), BlockSectionView.athwart(block, scale), words);
    }
}
