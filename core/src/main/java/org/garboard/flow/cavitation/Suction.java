package org.garboard.flow.cavitation;

import org.garboard.units.Angle;

/** A shape that speeds the water up, and how far: its least pressure coefficient in potential flow. */
public sealed interface Suction permits Suction.FairingNose, Suction.RoundedEdge {

    /** Most yaw of the flow for which a fairing is looked at; more is no longer flow along it. */
    double MOST_YAW_DEG = 30;

    /** Least pressure coefficient, below 0. */
    double least();

    /**
     * A fairing as half of an ellipsoid, its flat side on the skin: mirrored in the skin, the flow is that of the whole.
     *
     * @param length of the block [m]
     * @param width of it [m]
     * @param height of it above the skin [m]
     * @param yaw of the flow in the skin's plane
     */
    record FairingNose(double length, double width, double height, Angle yaw) implements Suction {
        /** With which water passes a block: our choice, as much as a boat makes leeway in a turn. */
        private static final Angle LEEWAY = Angle.ofDegrees(5);

        public FairingNose {
            if (!(Math.abs(yaw.degrees()) <= MOST_YAW_DEG)) {
                throw new IllegalArgumentException("yaw of the flow at a fairing is " + yaw.degrees() + " deg; it must be from -30 to 30");
            }
        }

        /**
         * A block with upright sides and a flat face, whose nose is rounded to a quarter ellipse: half of the ellipsoid whose forward
         * half is that nose, as wide as the block. What goes on abaft of the nose keeps the water from turning in again, so that the
         * true suction is less: by panels laid over such blocks it is two thirds to nine tenths of this. An ellipsoid of the whole
         * block's length, which nobody cuts, has a quarter of it; an edge without end across the flow, past which no water turns
         * aside, three times as much.
         *
         * @param run over which the nose runs out [m]
         * @param width of the block [m]
         * @param height of its high side [m]
         */
        public static FairingNose ofBlock(double run, double width, double height) {
            return new FairingNose(2 * run, width, height, LEEWAY);
        }

        @Override
        public double least() {
            return new Ellipsoid(length / 2, width / 2, height).leastPressure(Math.cos(yaw.radians()), Math.sin(yaw.radians()), 0);
        }
    }

    /**
     * An edge that stands across the flow and is rounded: of a face or bead proud of the skin, or the after edge of
     * a pocket that is so much deeper than the flow runs into it. Taken as half an ellipse of that height whose crest
     * has that radius: 1 - (1 + sqrt(height/radius))^2. Our choice: a bead comes out exactly, a step with a flat top
     * behind its edge sucks less.
     *
     * @param height [m]
     * @param radius of the edge [m]
     */
    record RoundedEdge(double height, double radius) implements Suction {
        /** Round a flush face: it stands out no more than two coats of paint and a feathered sealant, and is faired; our choice. */
        public static final RoundedEdge BEAD = new RoundedEdge(0.0005, 0.005);

        public RoundedEdge {
            if (!(height > 0 && radius > 0 && Double.isFinite(height + radius))) {
                throw new IllegalArgumentException("edge " + height + " m high rounded to " + radius + " m; both must be more than 0");
            }
        }

        @Override
        public double least() {
            return 1 - Math.pow(1 + Math.sqrt(height / radius), 2);
        }
    }
}
