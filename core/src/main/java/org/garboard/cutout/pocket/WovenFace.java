package org.garboard.cutout.pocket;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.garboard.cutout.skin.AxisFrame;
import org.garboard.solid.Draft.Looks;
import org.garboard.solid.Fill;
import org.garboard.solid.Loop;
import org.garboard.solid.Weave;

/** A pocket's net as points of a body in the making, by ring and ray; points that lie on each other are one. */
final class WovenFace {
    private static final double LARGE = 10;

    private final Weave weave;
    private final PocketSurface surface;
    private final double[] net;
    private final int[][] numbers;

    private WovenFace(Weave weave, PocketSurface surface, double[] net) {
        this.weave = weave;
        this.surface = surface;
        this.net = net;
        this.numbers = new int[surface.rings()][surface.rays().count()];
    }

    static WovenFace of(Weave weave, PocketSurface surface, double[] net) {
        WovenFace face = new WovenFace(weave, surface, net);
        int rays = surface.rays().count();
        int rings = surface.rings();
        for (int ray = 0; ray < rays; ray++) {
            for (int ring = 0; ring < rings; ring++) {
                int at = face.at(ray, ring);
                if (ring > 0 && same(net, at, at - 3)) {
                    face.numbers[ring][ray] = face.numbers[ring - 1][ray];
                } else if (ray > 0 && same(net, at, at - 3 * rings)) {
                    face.numbers[ring][ray] = face.numbers[ring][ray - 1];
                } else if (ray == rays - 1 && same(net, at, 3 * ring)) {
                    face.numbers[ring][ray] = face.numbers[ring][0];
                } else {
                    face.numbers[ring][ray] = weave.point(net[at], net[at + 1], net[at + 2]);
                }
            }
        }
        return face;
    }

    private static boolean same(double[] net, int a, int b) {
        return Math.abs(net[a] - net[b]) + Math.abs(net[a + 1] - net[b + 1]) + Math.abs(net[a + 2] - net[b + 2]) < 1e-9;
    }

    private int at(int ray, int ring) {
        return 3 * (surface.rings() * ray + ring);
    }

    /** The skin under mouth and blends, ring for ring under this face so that the two nowhere cross. */
    WovenFace onSkin(AxisFrame frame) {
        WovenFace skin = new WovenFace(weave, surface, net);
        for (int ray = 0; ray < surface.rays().count(); ray++) {
            for (int ring = surface.rings() - 1; ring >= surface.mouthRing(); ring--) {
                int at = at(ray, ring);
                boolean ends = numbers[ring][ray] == last()[ray];
                skin.numbers[ring][ray] = ends ? numbers[ring][ray] : weave.point(net[at], net[at + 1], frame.outside(net[at], net[at + 1]));
            }
        }
        return skin;
    }

    int number(int ray, int ring) {
        return numbers[ring][ray];
    }

    int[] ring(int ring) {
        return numbers[ring].clone();
    }

    /** The ring that lies farthest out. */
    int[] last() {
        return numbers[surface.rings() - 1];
    }

    /**
     * Lays triangles between rings.
     *
     * @param range rays in turn, the first once more at the end to go all round
     * @param innermost ring
     */
    void bands(Looks looks, int[] range, int innermost) {
        for (int ring = surface.rings() - 1; ring > innermost; ring--) {
            weave.strip(looks, pick(ring, range), pick(ring - 1, range));
        }
    }

    private int[] pick(int ring, int[] range) {
        return Arrays.stream(range).map(ray -> numbers[ring][ray]).toArray();
    }

    /** All rays in turn, and the first again. */
    int[] allRound() {
        int count = surface.rays().count();
        return IntStream.rangeClosed(0, count).map(ray -> ray % count).toArray();
    }

    /** Blends, edge, wall and floor. */
    void lay(Looks looks, int[] range, double height) {
        bands(looks, range, 0);
        int[] ring = new int[range.length];
        double[] places = new double[2 * range.length];
        int count = 0;
        for (int ray : range) {
            int number = numbers[0][ray];
            if (count == 0 || number != ring[count - 1] && number != ring[0]) {
                ring[count] = number;
                places[2 * count] = net[at(ray, 0)];
                places[2 * count + 1] = net[at(ray, 0) + 1];
                count++;
            }
        }
        Fill fill = Fill.of(Loop.of(Arrays.copyOf(places, 2 * count)), List.of(), LARGE);
        weave.face(looks, fill, Arrays.copyOf(ring, count), (u, v) -> weave.point(u, v, height));
    }

    /** A ring seen along the frame's axis. */
    static Loop outline(PocketSurface surface, double[] net, int ring) {
        int rays = surface.rays().count();
        double[] places = new double[2 * rays];
        for (int ray = 0; ray < rays; ray++) {
            System.arraycopy(net, 3 * (surface.rings() * ray + ring), places, 2 * ray, 2);
        }
        return Loop.of(places);
    }
}
