package org.garboard.acoustics.beam;

import java.util.function.ToDoubleFunction;
import org.garboard.units.Angle;

/**
 * What an echo from straight below loses out and back by where the beam looks, read off a table: for searches of a whole bottom.
 * Owns its arrays.
 */
public final class EchoLoss {
    private static final int STEPS = 4096;
    /** Near a null the loss knows no end [dB]. */
    private static final double MOST = 120;

    /** By the sine from the axis; of a rectangle by the sine along each side. */
    private final double[] along;
    private final double[] across;

    private EchoLoss(double[] along, double[] across) {
        this.along = along;
        this.across = across;
    }

    public static EchoLoss of(Element element) {
        Angle none = Angle.ofRadians(0);
        return new EchoLoss(table(off -> element.echoLoss(off, none)), element instanceof Disc ? null : table(off -> element.echoLoss(none, off)));
    }

    private static double[] table(ToDoubleFunction<Angle> loss) {
        double[] table = new double[STEPS + 1];
        for (int i = 0; i <= STEPS; i++) {
            table[i] = Math.min(MOST, loss.applyAsDouble(Angle.ofRadians(Math.asin(Math.min(1, (double) i / STEPS)))));
        }
        return table;
    }

    /** [dB] for a beam that looks (x, y, z), z down below 0, of any length. */
    public double at(double x, double y, double z) {
        if (!(z < 0)) {
            return MOST;
        }
        double size = 1 / Math.sqrt(x * x + y * y + z * z);
        return across == null ? read(along, Math.sqrt(x * x + y * y) * size)
            : read(along, Math.abs(x) * size) + read(across, Math.abs(y) * size);
    }

    private static double read(double[] table, double sine) {
        double place = Math.min(1, sine) * STEPS;
        int i = Math.min(STEPS - 1, (int) place);
        return table[i] + (place - i) * (table[i + 1] - table[i]);
    }
}
