package org.garboard.flow.streams;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Where water from the surface at the bow goes along the hull: streamlines of the upper water there, evenly spaced in
 * depth.
 *
 * <p>Near-surface water at the bow carries air and can be drawn deep under the hull: "closely related to the
 * distribution of the bow pressure field" (Journal of Marine Science and Engineering 8(12):1040, 2020, abstract).
 *
 * @param depth of the upper water [m]
 * @param station x of the place where they start [m]
 * @param lines to starboard, the shallowest first
 */
public record SweepDown(double depth, double station, List<Streamline> lines) {
    /** How deep the water at the bow is taken to carry air [m]: our choice. */
    public static final double USUAL_DEPTH = 0.3;
    /** Lines that are traced: shares come in steps of a hundredth. */
    public static final int LINES = 100;
    /** Part of the wetted length from its forward end at which lines start: our choice, clear of the stem itself. */
    private static final double START = 0.05;

    public SweepDown {
        lines = List.copyOf(lines);
        if (lines.isEmpty()) {
            throw new IllegalArgumentException("no line starts at the bow");
        }
    }

    /**
     * @param depth of the upper water [m]; where the hull is not so deep at the start, all of her depth there
     * @throws IllegalArgumentException if the depth is not more than nothing
     */
    public static SweepDown of(HullStreams streams, double depth) {
        if (!(depth > 0 && Double.isFinite(depth))) {
            throw new IllegalArgumentException(String.format(Locale.ROOT, "an upper water of %s m: it must be deeper than 0", depth));
        }
        double start = streams.forwardEnd() + START * (streams.afterEnd() - streams.forwardEnd());
        double reach = Math.min(depth, streams.keelDepth(start));
        List<Streamline> lines = new ArrayList<>();
        for (int i = 0; i < LINES; i++) {
            if (streams.atDepth(start, reach * (i + 0.5) / LINES) instanceof Streamline line) {
                lines.add(line);
            }
        }
        return new SweepDown(depth, start, lines);
    }

    /** Why a line of it ends amid the hull, so that shares may be larger; empty where none does. */
    public Optional<String> lost() {
        return lines.stream().map(Streamline::lost).flatMap(Optional::stream).findFirst();
    }

    /**
     * The share of the lines that pass within a distance of a place, either side by itself.
     *
     * @param y to either side; each side has its own water
     */
    public double share(double x, double y, double z, double distance) {
        if (!(distance > 0)) {
            throw new IllegalArgumentException("a distance of " + distance + " m: it must be more than 0");
        }
        long near = lines.stream().filter(line -> line.distance(x, Math.abs(y), z) <= distance).count();
        return (double) near / lines.size();
    }
}
