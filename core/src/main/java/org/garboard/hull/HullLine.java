package org.garboard.hull;

import java.util.List;
import org.garboard.geometry.CubicSpline;
import org.garboard.offsets.LineKind;

/**
 * A named line of the hull as a curve along the length: keel, flat keel's edge, chine, sheer. Where the hull
 * has steps it is broken there into pieces.
 */
public final class HullLine {
    private final String name;
    private final LineKind kind;
    private final List<Piece> pieces;

    /** One unbroken piece, from x to x [m]. */
    private record Piece(CubicSpline halfBreadth, CubicSpline height, double from, double to) {
    }

    private HullLine(String name, LineKind kind, List<Piece> pieces) {
        this.name = name;
        this.kind = kind;
        this.pieces = List.copyOf(pieces);
    }

    /** In one piece. */
    HullLine(String name, LineKind kind, CubicSpline halfBreadth, CubicSpline height) {
        this(name, kind, List.of(new Piece(halfBreadth, height, height.knots().start(), height.knots().end())));
    }

    /** The line of a whole hull from those of its lengths, forward to aft. */
    static HullLine joined(List<HullLine> lines) {
        return lines.size() == 1 ? lines.get(0) : new HullLine(lines.get(0).name, lines.get(0).kind,
            lines.stream().flatMap(line -> line.pieces.stream()).toList());
    }

    /** The same piece, written over splines that may reach farther, ending where faces cut it. */
    HullLine between(CubicSpline drawnY, CubicSpline drawnZ, EndFace fore, EndFace aft) {
        return new HullLine(name, kind,
            List.of(new Piece(drawnY, drawnZ, fore.end(drawnY::value, drawnZ::value), aft.end(drawnY::value, drawnZ::value))));
    }

    public String name() {
        return name;
    }

    public LineKind kind() {
        return kind;
    }

    /** Half-breadth at x [m]; at a step that of the forward piece. */
    public double y(double x) {
        return at(x).halfBreadth.value(x);
    }

    /** Height above base at x [m]; at a step that of the forward piece. */
    public double z(double x) {
        return at(x).height.value(x);
    }

    private Piece at(double x) {
        int i = 0;
        while (i < pieces.size() - 1 && x > pieces.get(i).to) {
            i++;
        }
        return pieces.get(i);
    }

    /** x at which it begins forward [m]: on the stem, or at the first station. */
    public double forwardEnd() {
        return pieces.get(0).from;
    }

    /** x at which it ends aft [m]. */
    public double afterEnd() {
        return pieces.get(pieces.size() - 1).to;
    }

    int pieces() {
        return pieces.size();
    }

    /** x at which a piece begins [m]. */
    double from(int piece) {
        return pieces.get(piece).from;
    }

    /** x at which a piece ends [m]. */
    double to(int piece) {
        return pieces.get(piece).to;
    }

    /** Rise dz/dx at x, positive when the line rises aft. */
    public double rise(double x) {
        return at(x).height.slope(x);
    }

    /** Spread dy/dx at x, positive when it runs outboard aft. */
    public double spread(double x) {
        return at(x).halfBreadth.slope(x);
    }

    /** Size of the second derivative of (y, z) along x [1/m]. */
    double bend(double x) {
        return Math.hypot(at(x).halfBreadth.derivative(2, x), at(x).height.derivative(2, x));
    }

    CubicSpline halfBreadth(int piece) {
        return pieces.get(piece).halfBreadth;
    }

    CubicSpline height(int piece) {
        return pieces.get(piece).height;
    }
}
