package org.garboard.acoustics.beam;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

class EchoLossTest {

    /** Against the element itself, inside the limits that places are held to; a table of 4096 sines is true to 0.001 dB. */
    @Test
    void exact_theTableIsTheElement() {
        for (Element element : new Element[] {new Disc(0.075, 0.03), new Disc(0.045, 0.0075), new Rectangle(0.05, 0.12, 0.01)}) {
            EchoLoss loss = EchoLoss.of(element);
            for (double along = -6; along <= 6; along += 1.7) {
                for (double athwart = -5; athwart <= 5; athwart += 1.3) {
                    double x = Math.tan(Math.toRadians(along));
                    double y = Math.tan(Math.toRadians(athwart));
                    double exact = element.echoLoss(Angle.ofDegrees(along), Angle.ofDegrees(athwart));
                    if (exact < 15) {
                        assertEquals(exact, loss.at(x, y, -1), 1e-3);
                        assertEquals(loss.at(x, y, -1), loss.at(2 * x, 2 * y, -2), 1e-9);
                    }
                }
            }
        }
    }

    /** D/lambda 2.5: 1.028 dB at 5 deg, 4.209 at 10, as the closed form has them. */
    @Test
    void published_twoWayTiltLoss() {
        EchoLoss loss = EchoLoss.of(new Disc(2.5, 1));
        assertEquals(1.028, loss.at(Math.tan(Math.toRadians(5)), 0, -1), 1e-3);
        assertEquals(4.209, loss.at(0, Math.tan(Math.toRadians(10)), -1), 2e-3);
    }

    @Test
    void law_aBeamThatLooksUpHearsNothing() {
        assertEquals(120, EchoLoss.of(new Disc(2.5, 1)).at(0, 0, 1));
    }
}
