package org.garboard.drawing.sheets;

import org.garboard.hull.Fit;
import org.garboard.offsets.SkinSurface;

/** To which surface the figures run, and how closely that surface follows the table. */
final class SurfaceNote {

    private SurfaceNote() {
    }

    static String of(SheetTask task) {
        return surface(task.table().surface(), task.table().word()) + " The hull is drawn " + fit(task);
    }

    private static String surface(SkinSurface surface, String word) {
        String outside = SkinSurface.OUTSIDE_OF_SKIN.words();
        return surface.equals(SkinSurface.OUTSIDE_OF_SKIN) ? "Figures and " + word + " run to " + outside + "."
                : "Figures run to " + outside + ", the table to " + surface.words() + ".";
    }

    private static String fit(SheetTask task) {
        double half = task.table().leastCount() / 2;
        if (task.job().fit() == Fit.EXACT || half == 0) {
            return "exactly through the " + task.table().word() + "'s values, with the ripples of their rounding.";
        }
        return "fair within the " + task.table().word() + "'s rounding: no value is passed by more than half its least count, "
                + Figures.tenths(half * 1000) + " mm.";
    }
}
