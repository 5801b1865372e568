package org.garboard.hull;

import org.garboard.offsets.OffsetTable;

/** How a hull is drawn from its table. */
public enum Fit {
    /** The fairest surface within half the table's least count of every reading. */
    WITHIN_ROUNDING {
        @Override
        public Hull draw(OffsetTable table) {
            return Hull.faired(table);
        }
    },
    /** Through every point of the table, ripples of its rounding and all. */
    EXACT {
        @Override
        public Hull draw(OffsetTable table) {
            return Hull.through(table);
        }
    };

    /** @throws IllegalArgumentException if the table has faults that its checks would have named */
    public abstract Hull draw(OffsetTable table);
}
