package org.garboard.drawing.dxf;

import java.util.ArrayList;
import java.util.List;

/** The blocks that hold the strokes of a sheet's dimensions, in the order they were drawn. */
final class DimensionBlocks {

    /**
     * One dimension's block.
     *
     * @param name "*D1" and up
     * @param record handle of its block record, the owner of its strokes
     * @param strokes its entities
     */
    record Block(String name, int record, Tags strokes) {
    }

    private final List<Block> blocks = new ArrayList<>();

    Block open(Handles handles) {
        Block block = new Block("*D" + (blocks.size() + 1), handles.next(), new Tags());
        blocks.add(block);
        return block;
    }

    List<Block> all() {
        return List.copyOf(blocks);
    }
}
