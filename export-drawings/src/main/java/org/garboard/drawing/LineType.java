package org.garboard.drawing;

import java.util.List;

/**
 * Line types by the names and patterns of the metric line type file that CAD programs share
 * (some map by name and ignore the pattern, so both must be right).
 */
public enum LineType {
    CONTINUOUS("Continuous", "Solid line", List.of()),
    CENTRE("CENTER2", "Center ____ _ ____ _ ____", List.of(19.05, -3.175, 3.175, -3.175)),
    HIDDEN("HIDDEN2", "Hidden _ _ _ _ _ _ _ _", List.of(3.175, -1.5875)),
    DIVIDE("DIVIDE2", "Divide __..__..__..__", List.of(6.35, -3.175, 0.0, -3.175, 0.0, -3.175));

    private final String dxfName;
    private final String description;
    private final List<Double> pattern;

    LineType(String dxfName, String description, List<Double> pattern) {
        this.dxfName = dxfName;
        this.description = description;
        this.pattern = pattern;
    }

    /** Name in a DXF. */
    public String dxfName() {
        return dxfName;
    }

    public String description() {
        return description;
    }

    /** Dashes positive, gaps negative, dots 0 [mm on paper]; empty for a solid line. */
    public List<Double> pattern() {
        return pattern;
    }

    /** Length of one repeat [mm]. */
    public double repeat() {
        return pattern.stream().mapToDouble(Math::abs).sum();
    }
}
