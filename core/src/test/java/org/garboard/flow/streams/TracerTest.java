package org.garboard.flow.streams;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Motions over a flat skin of 10 m by 4 m, a column and a row a metre each. */
class TracerTest {

    private interface Direction {
        void at(double u, double v, double[] rate);
    }

    private record Flat(Direction direction) implements SurfaceMotion {
        @Override
        public int columns() {
            return 10;
        }

        @Override
        public int rows() {
            return 4;
        }

        @Override
        public void rate(double u, double v, double[] out) {
            direction.at(u, v, out);
            double size = Math.hypot(out[0], out[1]);
            out[0] /= size;
            out[1] /= size;
        }

        @Override
        public void position(double u, double v, double[] out) {
            out[0] = u;
            out[1] = v;
            out[2] = 0;
        }
    }

    @Test
    void exact_straightOn() {
        Tracer tracer = new Tracer(new Flat((u, v, rate) -> {
            rate[0] = 1;
            rate[1] = 0;
        }));
        Tracer.Way down = tracer.down(3, 2);
        assertEquals(Streamline.Followed.TO_THE_END, down.followed());
        assertEquals(10, down.places().get(down.places().size() - 1)[0], 1e-8);
        assertEquals(Streamline.Followed.TO_THE_END, tracer.up(3, 2).followed());
    }

    /** Round and round the middle: the line never comes to an end of the skin, and is lost both ways. */
    @Test
    void law_aWhirlIsToldAsLost() {
        Tracer tracer = new Tracer(new Flat((u, v, rate) -> {
            rate[0] = 2 - v;
            rate[1] = u - 5;
        }));
        assertEquals(Streamline.Followed.LOST, tracer.down(5.5, 2).followed());
        assertEquals(Streamline.Followed.LOST, tracer.up(5.5, 2).followed());
    }

    /** Where all water makes for one place the integrator gives up; down is lost there, up is not. */
    @Test
    void law_aSinkIsToldAsLost() {
        Tracer tracer = new Tracer(new Flat((u, v, rate) -> {
            rate[0] = 5 - u;
            rate[1] = 2 - v;
        }));
        Tracer.Way down = tracer.down(2, 2.1);
        assertEquals(Streamline.Followed.LOST, down.followed());
        assertTrue(down.places().get(down.places().size() - 1)[0] < 5.1);
        assertEquals(Streamline.Followed.TO_THE_END, tracer.up(2, 2.1).followed());
    }

    @Test
    void aLostLineSaysWhere() {
        List<StreamPoint> points = List.of(new StreamPoint(1, 0.5, 0, 0, 1), new StreamPoint(4, 0.6, 0, 3, 1));
        assertEquals(Optional.of("a streamline cannot be followed ahead of x = 1.00 m, y = 0.50 m, where the water stands still or goes round"),
            new Streamline(points, 0, Streamline.Followed.LOST, Streamline.Followed.TO_THE_END).lost());
        Streamline abaft = new Streamline(points, 0, Streamline.Followed.TO_THE_END, Streamline.Followed.LOST);
        assertEquals(Optional.of("a streamline cannot be followed abaft of x = 4.00 m, y = 0.60 m, where the water stands still or goes round"), abaft.lost());
        assertEquals(Optional.empty(), new Streamline(points, 0, Streamline.Followed.TO_THE_END, Streamline.Followed.TO_THE_END).lost());
        assertEquals(abaft.lost(), new SweepDown(0.3, 1, List.of(abaft)).lost());
    }
}
