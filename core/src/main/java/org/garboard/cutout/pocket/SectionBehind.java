package org.garboard.cutout.pocket;

import java.util.ArrayList;
import java.util.List;

/**
 * What is left of a section's parts when each is moved into the laminate: of parts that lie over each other the higher
 * one, so that edges rounder than the laminate is thick stay round and others come to a point, and a part that its
 * neighbours cover is gone. This is the boundary of all places nearer to the section than the thickness.
 */
final class SectionBehind {
    private static final int HALVINGS = 48;
    /** An arc of which less is left is a corner [m]: points nearer than that fall together in files. */
    private static final double SHORTEST_ARC = 2e-5;

    private final List<SectionPart> shown = new ArrayList<>();
    /** Where each of them begins. */
    private final List<Double> starts = new ArrayList<>();

    /** @param parts by order, the surface outside last */
    SectionBehind(List<SectionPart> parts) {
        parts.forEach(this::lay);
    }

    private void lay(SectionPart part) {
        double start = part.from();
        while (!shown.isEmpty()) {
            SectionPart last = shown.get(shown.size() - 1);
            if (part.to() <= starts.get(starts.size() - 1)) {
                return;
            }
            double low = Math.max(starts.get(starts.size() - 1), part.from());
            double high = Math.min(last.to(), part.to());
            if (low >= high) {
                start = Math.max(start, Math.min(low, last.to()));
                break;
            }
            boolean under = last.height(low) <= part.height(low);
            if (under && starts.get(starts.size() - 1) >= part.from()) {
                start = starts.remove(starts.size() - 1);
                shown.remove(shown.size() - 1);
                continue;
            }
            if (high == part.to() && last.height(high) >= part.height(high)) {
                return;
            }
            start = under ? low : crossing(last, part, low, high);
            break;
        }
        shown.add(part);
        starts.add(start);
    }

    private static double crossing(SectionPart last, SectionPart part, double low, double high) {
        double over = low;
        double under = high;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (over + under) / 2;
            if (last.height(middle) > part.height(middle)) {
                over = middle;
            } else {
                under = middle;
            }
        }
        return (over + under) / 2;
    }

    /** Where the surface outside begins [m]. */
    double mouth() {
        return starts.get(starts.size() - 1);
    }

    /**
     * The points of the section.
     *
     * @param pieces of each corner's arc
     * @param out distance and height of each, in turn
     */
    void trace(int[] pieces, double[] out) {
        int at = 0;
        for (int corner = 0; corner < pieces.length; corner++) {
            int order = 2 * corner;
            int k = 0;
            while (k + 1 < shown.size() && shown.get(k).order() < order) {
                k++;
            }
            double low = starts.get(k);
            double high = k + 1 < shown.size() ? starts.get(k + 1) : low;
            boolean arc = shown.get(k).order() == order && Math.hypot(high - low, shown.get(k).height(low) - shown.get(k).height(high)) > SHORTEST_ARC;
            for (int i = 0; i <= pieces[corner]; i++) {
                double x = arc ? shown.get(k).between(low, high, (double) i / Math.max(1, pieces[corner])) : low;
                out[at++] = x;
                out[at++] = shown.get(k).height(x);
            }
        }
        SectionPart outside = shown.get(shown.size() - 1);
        out[at - 2] = mouth();
        out[at - 1] = outside.height(mouth());
    }
}
