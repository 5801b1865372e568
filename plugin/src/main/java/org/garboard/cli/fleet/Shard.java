package org.garboard.cli.fleet;

import java.util.ArrayList;
import java.util.List;

/**
 * One part of a fleet that is shared out over machines: the jobs whose place in the list leaves this part's number when
 * divided by the number of parts, so that each machine needs to know only the list.
 *
 * @param part from 1
 * @param parts how many there are
 */
public record Shard(int part, int parts) {
    public static final Shard ALL = new Shard(1, 1);

    public Shard {
        if (parts < 1 || part < 1 || part > parts) {
            throw new IllegalArgumentException("shard " + part + " of " + parts);
        }
    }

    public boolean isAll() {
        return parts == 1;
    }

    /** What of a list falls to this part, in its order. */
    public <T> List<T> of(List<T> all) {
        List<T> mine = new ArrayList<>();
        for (int k = part - 1; k < all.size(); k += parts) {
            mine.add(all.get(k));
        }
        return mine;
    }
}
