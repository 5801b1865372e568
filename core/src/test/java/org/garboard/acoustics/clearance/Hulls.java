package org.garboard.acoustics.clearance;

import java.util.ArrayList;
import java.util.List;
import org.garboard.hull.Hull;
import org.garboard.offsets.Entry;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.Measure;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.SkinSurface;
import org.garboard.offsets.Station;
import org.garboard.offsets.TableLine;

/** Wedges 6 m long, the same all along: straight lines only, so that rays meet planes. */
final class Hulls {
    private static final int STATIONS = 7;

    private final List<TableLine> lines = new ArrayList<>();

    private Hulls() {
    }

    /** Keel at z = 0, chine 1 m out, sheer 1.2 m out and 1.2 m up. */
    static Hull wedge(double deadriseDeg) {
        double rise = Math.tan(Math.toRadians(deadriseDeg));
        return new Hulls().row(LineKind.KEEL, "Keel", Measure.HEIGHT, 0)
            .row(LineKind.CHINE, "Chine", Measure.HALF_BREADTH, 1).row(LineKind.CHINE, "Chine", Measure.HEIGHT, rise)
            .row(LineKind.SHEER, "Sheer", Measure.HALF_BREADTH, 1.2).row(LineKind.SHEER, "Sheer", Measure.HEIGHT, 1.2).hull();
    }

    /** The wedge begins at z = 0, 0.15 m out, at the top of a box keel 0.3 m deep with upright sides. */
    static Hull onBoxKeel(double deadriseDeg) {
        double rise = Math.tan(Math.toRadians(deadriseDeg));
        return new Hulls().row(LineKind.KEEL, "Keel", Measure.HEIGHT, -0.3)
            .row(LineKind.HALF_SIDING, "Half-siding", Measure.HALF_BREADTH, 0.15)
            .row(LineKind.KEEL_TOP, "Top of keel", Measure.HALF_BREADTH, 0.15).row(LineKind.KEEL_TOP, "Top of keel", Measure.HEIGHT, 0)
            .row(LineKind.CHINE, "Chine", Measure.HALF_BREADTH, 1.15).row(LineKind.CHINE, "Chine", Measure.HEIGHT, rise)
            .row(LineKind.SHEER, "Sheer", Measure.HALF_BREADTH, 1.3).row(LineKind.SHEER, "Sheer", Measure.HEIGHT, 1.2).hull();
    }

    private Hulls row(LineKind kind, String name, Measure measure, double value) {
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < STATIONS; i++) {
            entries.add(new Entry(i, value));
        }
        lines.add(new TableLine(kind, name, 0, measure, entries));
        return this;
    }

    private Hull hull() {
        List<Station> stations = new ArrayList<>();
        for (int i = 0; i < STATIONS; i++) {
            stations.add(new Station(String.valueOf(i), i));
        }
        return Hull.through(new OffsetTable("closed form", SkinSurface.OUTSIDE_OF_SKIN, 0.001, stations, lines));
    }
}
