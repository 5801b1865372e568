package org.garboard.lines;

import java.util.List;
import java.util.function.DoubleFunction;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.hull.Curve;
import org.garboard.hull.Hull;
import org.garboard.hull.HullCurves;
import org.garboard.hull.HullLine;
import org.garboard.units.Angle;
import org.garboard.units.FixedDecimal;

/** A line of a hull that can be asked for by name or by the plane that cuts it out. */
public sealed interface DrawnLine {

    /** Its curves on the starboard skin, within chord [m] of true; none where it misses the hull. */
    List<Curve> on(Hull hull, double chord);

    /**
     * What it is called, its place included.
     *
     * @param length prints a length [m]
     */
    String words(DoubleFunction<String> length);

    /** A named line. It bends two ways, and is judged in profile and in plan. */
    record Named(HullLine line) implements DrawnLine {
        @Override
        public List<Curve> on(Hull hull, double chord) {
            return new HullCurves(hull).line(line, chord);
        }

        @Override
        public String words(DoubleFunction<String> length) {
            return line.name();
        }
    }

    /** A line in a plane. */
    sealed interface Cut extends DrawnLine {

        /** Unit vector square to the plane. */
        Vector3D square();
    }

    /**
     * Cut by a plane athwartships.
     *
     * @param x aft of the table's origin [m]
     */
    record Section(double x) implements Cut {
        @Override
        public List<Curve> on(Hull hull, double chord) {
            return new HullCurves(hull).section(x, chord);
        }

        @Override
        public String words(DoubleFunction<String> length) {
            return "Section at x " + length.apply(x);
        }

        @Override
        public Vector3D square() {
            return Vector3D.of(1, 0, 0);
        }
    }

    /**
     * Cut by an upright plane along the hull.
     *
     * @param y from the centreline [m]
     */
    record Buttock(double y) implements Cut {
        @Override
        public List<Curve> on(Hull hull, double chord) {
            return new HullCurves(hull).buttock(y, chord);
        }

        @Override
        public String words(DoubleFunction<String> length) {
            return "Buttock " + length.apply(y) + " from the centreline";
        }

        @Override
        public Vector3D square() {
            return Vector3D.of(0, 1, 0);
        }
    }

    /**
     * Cut by a level plane.
     *
     * @param z above base [m]
     */
    record Waterline(double z) implements Cut {
        @Override
        public List<Curve> on(Hull hull, double chord) {
            return new HullCurves(hull).waterline(z, chord);
        }

        @Override
        public String words(DoubleFunction<String> length) {
            return "Waterline " + length.apply(z) + " above base";
        }

        @Override
        public Vector3D square() {
            return Vector3D.of(0, 0, 1);
        }
    }

    /**
     * Cut by a slanting plane along the hull, down and outward from the centreline.
     *
     * @param z above base on the centreline [m]
     * @param below how far it runs below the horizontal, more than nothing and less than a right angle
     */
    record Diagonal(double z, Angle below) implements Cut {
        public Diagonal {
            if (!(below.radians() > 0 && below.radians() < Math.PI / 2)) {
                throw new IllegalArgumentException("a diagonal runs more than 0 and less than 90 deg below the "
                    + "horizontal, not " + below.degrees() + " deg");
            }
        }

        @Override
        public List<Curve> on(Hull hull, double chord) {
            return new HullCurves(hull).diagonal(z, below, chord);
        }

        @Override
        public String words(DoubleFunction<String> length) {
            return "Diagonal from " + length.apply(z) + " above base, " + FixedDecimal.format(below.degrees(), 1)
                + "° below the horizontal,";
        }

        @Override
        public Vector3D square() {
            return Vector3D.of(0, Math.sin(below.radians()), Math.cos(below.radians()));
        }

        /** Distance from the centreline in the plane of the diagonal [m], at half-breadth y. */
        public double outward(double y) {
            return y / Math.cos(below.radians());
        }
    }
}
