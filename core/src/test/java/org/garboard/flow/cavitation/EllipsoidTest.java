package org.garboard.flow.cavitation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EllipsoidTest {

    /** H. Lamb, ARC R&M 623, 1918, the table. He rounds a/b to 0.01, so 1.50 and 2.00 are 0.001 off; tolerance 0.0015. */
    @ParameterizedTest
    @CsvSource({"1.50, .305", "2.00, .209", "2.51, .156", "2.99, .122", "3.99, .082", "4.99, .059", "6.01, .045", "6.97, .036",
        "8.01, .029", "9.02, .024", "9.97, .021"})
    void published_inertiaCoefficientsOfSpheroids(double ratio, double printed) {
        assertEquals(printed, new Ellipsoid(ratio, 1, 1).inertiaAlong(), 0.0015);
    }

    /** Independent computation of the same ratios. */
    @ParameterizedTest
    @CsvSource({"1.50, .30375", "2.00, .21002", "2.51, .15543", "2.99, .12253", "3.99, .08185", "4.99, .05929", "6.01, .04507",
        "6.97, .03608", "8.01, .02920", "9.02, .02431", "9.97, .02080"})
    void independent_inertiaCoefficientsOfSpheroids(double ratio, double value) {
        assertEquals(value, new Ellipsoid(ratio, 1, 1).inertiaAlong(), 5e-6);
    }

    /** Lamb's closed form for a long spheroid. */
    @ParameterizedTest
    @CsvSource({"1.2", "2", "5", "12"})
    void exact_spheroid(double ratio) {
        double e = Math.sqrt(1 - 1 / (ratio * ratio));
        double g = 2 * (1 - e * e) / (e * e * e) * (0.5 * Math.log((1 + e) / (1 - e)) - e);
        assertEquals(g / (2 - g), new Ellipsoid(ratio, 1, 1).inertiaAlong(), 1e-11);
    }

    @Test
    void exact_sphere() {
        assertEquals(0.5, new Ellipsoid(3, 3, 3).inertiaAlong(), 1e-13);
        assertEquals(-1.25, new Ellipsoid(3, 3, 3).leastPressure(1, 0, 0), 1e-13);
        assertEquals(-1.25, new Ellipsoid(3, 3, 3).leastPressure(1, 2, -3), 1e-13);
    }

    @Test
    void exact_theThreeAlphasSumToTwo() {
        Ellipsoid body = new Ellipsoid(4, 1, 0.5);
        assertEquals(2, body.alpha(1, 0.5, 4) + body.alpha(4, 0.5, 1) + body.alpha(4, 1, 0.5), 1e-13);
    }

    /** The least pressure is that of the fastest place of the surface, found by going over it. */
    @Test
    void law_noPlaceIsFasterThanTheFormulaSays() {
        Ellipsoid body = new Ellipsoid(4, 1, 0.5);
        double[] stream = {Math.cos(0.2), Math.sin(0.2), 0};
        double fastest = 0;
        for (int i = 0; i <= 600; i++) {
            for (int j = 0; j < 1200; j++) {
                double polar = Math.PI * i / 600;
                double round = 2 * Math.PI * j / 1200;
                fastest = Math.max(fastest, speedSquared(body, 4 * Math.cos(polar), Math.sin(polar) * Math.cos(round),
                    0.5 * Math.sin(polar) * Math.sin(round), stream[0], stream[1], stream[2]));
            }
        }
        assertEquals(1 - fastest, body.leastPressure(stream[0], stream[1], stream[2]), 1e-4);
    }

    /** Square of the surface velocity over the stream's at a place of the surface: the tangential part of (1 + k_i) U_i. */
    private static double speedSquared(Ellipsoid body, double x, double y, double z, double u, double v, double w) {
        double nx = x / (body.a() * body.a());
        double ny = y / (body.b() * body.b());
        double nz = z / (body.c() * body.c());
        double size = Math.sqrt(nx * nx + ny * ny + nz * nz);
        double along = (1 + body.inertiaAlong()) * u;
        double across = (1 + body.inertiaAcross()) * v;
        double up = (1 + body.inertiaUp()) * w;
        double normal = (along * nx + across * ny + up * nz) / size;
        return (along * along + across * across + up * up - normal * normal) / (u * u + v * v + w * w);
    }

    @Test
    void law_sizeDoesNotMatterAndAxesCanBeNamedInAnyOrder() {
        assertEquals(new Ellipsoid(4, 1, 0.5).leastPressure(1, 0, 0), new Ellipsoid(0.8, 0.2, 0.1).leastPressure(1, 0, 0), 1e-13);
        assertEquals(new Ellipsoid(4, 1, 0.5).leastPressure(1, 0.1, 0), new Ellipsoid(1, 4, 0.5).leastPressure(0.1, 1, 0), 1e-13);
        assertEquals(new Ellipsoid(4, 1, 0.5).leastPressure(1, 0.1, 0), new Ellipsoid(4, 0.5, 1).leastPressure(1, 0, 0.1), 1e-13);
    }

    @Test
    void anAxisOfNothingIsRefused() {
        assertEquals("semi-axes of an ellipsoid 1.0, 0.0, 1.0 m; each must be more than 0",
            assertThrows(IllegalArgumentException.class, () -> new Ellipsoid(1, 0, 1)).getMessage());
    }
}
