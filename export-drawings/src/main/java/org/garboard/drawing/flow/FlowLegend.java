package org.garboard.drawing.flow;

import org.garboard.drawing.layout.Cluster;
import org.garboard.drawing.layout.Legend;
import org.garboard.drawing.layout.Lettering;
import org.garboard.drawing.water.PlanArea;
import org.garboard.drawing.water.PlanCurve;

/** Which line and which hatch is what. */
final class FlowLegend {
    /** Letter heights that a sample is long: a dashed line shows its kind. */
    private static final double SAMPLE = 12;

    private FlowLegend() {
    }

    static Cluster of(FlowPicture picture, Lettering lettering) {
        Legend legend = new Legend("LINES AND SHADOWS", lettering, SAMPLE);
        for (PlanCurve.Kind kind : PlanCurve.Kind.values()) {
            if (picture.curves().stream().anyMatch(curve -> curve.kind() == kind)) {
                legend.line(kind.layer(), kind.words());
            }
        }
        for (PlanArea.Kind kind : PlanArea.Kind.values()) {
            if (shows(picture, kind)) {
                legend.swatch(kind::over, kind.words());
            }
        }
        return legend.cluster();
    }

    private static boolean shows(FlowPicture picture, PlanArea.Kind kind) {
        return switch (kind) {
            case WAKE, ADVISORY -> !picture.shadows().isEmpty();
            case AHEAD -> picture.shadows().stream().anyMatch(shadow -> !shadow.ahead().isEmpty());
            default -> picture.areas().stream().anyMatch(area -> area.kind() == kind);
        };
    }
}
