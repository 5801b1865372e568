package org.garboard.exchange;

import java.util.List;
import org.garboard.exchange.xml.surface.Panel;
import org.garboard.exchange.xml.surface.Row;
import org.garboard.exchange.xml.surface.Surface;
import org.garboard.hull.Hull;

/** The surface of a record, to be held against the one that is drawn from its table again. */
public final class RecordedSurface {
    /** Our choice: a record prints places to the micrometre. */
    private static final double SAME = 1e-6;

    private final Surface surface;

    RecordedSurface(Surface surface) {
        this.surface = surface;
    }

    /** Whether the surface of a hull is the same within a micrometre, pole by pole. */
    public boolean isOf(Hull hull) {
        List<Panel> now = SurfaceMapping.toBean(hull, "", new FileHash("", "")).getPanel();
        List<Panel> then = surface.getPanel();
        if (now.size() != then.size()) {
            return false;
        }
        for (int i = 0; i < now.size(); i++) {
            if (!isSame(now.get(i).getPolesM().getRow(), then.get(i).getPolesM().getRow())) {
                return false;
            }
        }
        return true;
    }

    private static boolean isSame(List<Row> now, List<Row> then) {
        if (now.size() != then.size()) {
            return false;
        }
        for (int i = 0; i < now.size(); i++) {
            List<String> one = now.get(i).getValue();
            List<String> other = then.get(i).getValue();
            if (one.size() != other.size()) {
                return false;
            }
            for (int k = 0; k < one.size(); k++) {
                if (!isSame(one.get(k), other.get(k))) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean isSame(String now, String then) {
        String[] one = now.split(",");
        String[] other = then.split(",");
        for (int i = 0; i < one.length; i++) {
            if (Math.abs(Double.parseDouble(one[i]) - Double.parseDouble(other[i])) > SAME) {
                return false;
            }
        }
        return true;
    }
}
