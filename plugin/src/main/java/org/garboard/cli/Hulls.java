package org.garboard.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import org.garboard.cli.files.InputFault;
import org.garboard.cli.files.TableSource;
import org.garboard.hull.Fit;
import org.garboard.hull.Hull;

/** Hulls that were drawn, by what stands in their tables' files: a table that changed is drawn anew. */
final class Hulls {
    private static final int MOST = 8;

    private final Map<Key, Hull> drawn = new LinkedHashMap<>(MOST, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, Hull> eldest) {
            return size() > MOST;
        }
    };

    private record Key(String sha256, Fit fit) {
    }

    Hull of(TableSource source, Fit fit) throws InputFault {
        Key key = new Key(source.file().sha256(), fit);
        Hull hull = drawn.get(key);
        if (hull == null) {
            hull = source.hull(fit);
            drawn.put(key, hull);
        }
        return hull;
    }
}
