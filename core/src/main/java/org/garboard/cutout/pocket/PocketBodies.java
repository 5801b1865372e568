package org.garboard.cutout.pocket;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.FlatPoint;
import org.garboard.cutout.skin.AxisFrame;
import org.garboard.solid.Draft.Looks;
import org.garboard.solid.Fill;
import org.garboard.solid.Loop;
import org.garboard.solid.Parting;
import org.garboard.solid.Placement;
import org.garboard.solid.Solid;
import org.garboard.solid.Weave;

/** The closed bodies of a pocket. */
final class PocketBodies {
    private static final double LARGE = 10;
    /** Thickness of a former's rim, plumb to the floor [m]; our choice. */
    private static final double RIM = 0.012;

    private final PocketForm form;
    private final PocketSurface surface;
    private final AxisFrame frame;
    private double openingArea;

    PocketBodies(PocketForm form, PocketSurface surface) {
        this.form = form;
        this.surface = surface;
        this.frame = form.frame();
    }

    /** Which part of a body. */
    enum Half { WHOLE, STARBOARD, PORT }

    /** Points of a net, woven: rings of numbers. */
    private static final class Woven {
        private final int[][] rings;

        private Woven(int rings, int rays) {
            this.rings = new int[rings][rays];
        }

        private int[] last() {
            return rings[rings.length - 1];
        }
    }

    /** Points that lie on each other become one. */
    private Woven weave(Weave weave, double[] net) {
        int rays = surface.rays().count();
        int rings = surface.rings();
        Woven woven = new Woven(rings, rays);
        for (int ray = 0; ray < rays; ray++) {
            for (int ring = 0; ring < rings; ring++) {
                int at = 3 * (rings * ray + ring);
                if (ring > 0 && same(net, at, at - 3)) {
                    woven.rings[ring][ray] = woven.rings[ring - 1][ray];
                } else if (ray > 0 && same(net, at, at - 3 * rings)) {
                    woven.rings[ring][ray] = woven.rings[ring][ray - 1];
                } else if (ray == rays - 1 && same(net, at, 3 * ring)) {
                    woven.rings[ring][ray] = woven.rings[ring][0];
                } else {
                    woven.rings[ring][ray] = weave.point(net[at], net[at + 1], net[at + 2]);
                }
            }
        }
        return woven;
    }

    private static boolean same(double[] net, int a, int b) {
        return Math.abs(net[a] - net[b]) + Math.abs(net[a + 1] - net[b + 1]) + Math.abs(net[a + 2] - net[b + 2]) < 1e-9;
    }

    /** What is taken out of the boat: between skin and finished face. A former for it is the same, larger by its shrinkage. */
    Solid room(Half half, double shrinkage) throws CannotBeBuilt {
        double[] net = surface.net(0);
        Weave weave = new Weave(enlarged(1 + shrinkage));
        Woven upper = weave(weave, net);
        int[] range = range(half);
        upperFace(weave, upper, net, range, half, form.depth());
        double above = weave.area();
        Woven lower = under(weave, upper, net);
        for (int ring = surface.rings() - 1; ring > surface.mouthRing(); ring--) {
            band(weave, Looks.DOWN, pick(lower.rings[ring], range), pick(lower.rings[ring - 1], range), half);
        }
        skinInside(weave, lower.rings[surface.mouthRing()], net, half, upper, lower);
        openingArea = weave.area() - above;
        return sound(weave);
    }

    /** A mesh that does not close, or not in single precision, was asked to be finer than it can be made. */
    private static Solid sound(Weave weave) throws CannotBeBuilt {
        try {
            return weave.solid();
        } catch (IllegalArgumentException broken) {
            throw new CannotBeBuilt("walls, radii or ramps are so small that their faces fall together",
                "walls, radii and ramps of 0.1 mm or more, or of 0");
        }
    }

    private Placement enlarged(double by) {
        return (u, v, w, out, at) -> frame.place(by * u, by * v, by * w, out, at);
    }

    /** Rays of a half, from the centreline aft to the centreline forward; all of them for the whole. */
    private int[] range(Half half) {
        int count = surface.rays().count();
        if (half == Half.WHOLE) {
            return IntStream.range(0, count).toArray();
        }
        int middle = middle();
        int from = half == Half.STARBOARD ? surface.rays().aft(middle) : surface.rays().fore(middle);
        int to = half == Half.STARBOARD ? surface.rays().fore(middle) : surface.rays().aft(middle);
        int length = (to - from + count) % count + 1;
        return IntStream.range(0, length).map(i -> (from + i) % count).toArray();
    }

    /** The crease on the centreline. */
    private int middle() {
        for (int i = 0; i < form.creases().size(); i++) {
            if (Math.abs(form.creases().get(i).v(0)) < 1e-9) {
                return i;
            }
        }
        throw new IllegalArgumentException("a pocket that does not lie on the centreline has no halves");
    }

    private static int[] pick(int[] ring, int[] range) {
        return Arrays.stream(range).map(i -> ring[i]).toArray();
    }

    private static void band(Weave weave, Looks looks, int[] outer, int[] inner, Half half) {
        if (half == Half.WHOLE) {
            weave.band(looks, outer, inner);
        } else {
            weave.strip(looks, outer, inner);
        }
    }

    /** Blends, edge, wall, floor, seen from above. */
    private void upperFace(Weave weave, Woven upper, double[] net, int[] range, Half half, double height) {
        for (int ring = surface.rings() - 1; ring > 0; ring--) {
            band(weave, Looks.UP, pick(upper.rings[ring], range), pick(upper.rings[ring - 1], range), half);
        }
        floor(weave, Looks.UP, upper.rings[0], net, range, height);
    }

    private void floor(Weave weave, Looks looks, int[] ring, double[] net, int[] range, double height) {
        int[] numbers = new int[range.length];
        double[] at = new double[2 * range.length];
        int count = 0;
        for (int ray : range) {
            if (count == 0 || ring[ray] != numbers[count - 1] && ring[ray] != numbers[0]) {
                numbers[count] = ring[ray];
                at[2 * count] = net[3 * surface.rings() * ray];
                at[2 * count + 1] = net[3 * surface.rings() * ray + 1];
                count++;
            }
        }
        Fill fill = Fill.of(Loop.of(Arrays.copyOf(at, 2 * count)), List.of(), LARGE);
        weave.face(looks, fill, Arrays.copyOf(numbers, count), (u, v) -> weave.point(u, v, height));
    }

    /** The skin under mouth and blends, ring for ring under the finished face so that the two nowhere cross. */
    private Woven under(Weave weave, Woven upper, double[] net) {
        int rays = surface.rays().count();
        int rings = surface.rings();
        Woven lower = new Woven(rings, rays);
        for (int ray = 0; ray < rays; ray++) {
            for (int ring = rings - 1; ring >= surface.mouthRing(); ring--) {
                int at = 3 * (rings * ray + ring);
                boolean ends = upper.rings[ring][ray] == upper.last()[ray];
                lower.rings[ring][ray] = ends ? upper.rings[ring][ray]
                    : weave.point(net[at], net[at + 1], frame.outside(net[at], net[at + 1]));
            }
        }
        return lower;
    }

    /** The skin inside the mouth, parted where it has an edge; of a half also the face along the centreline. */
    private void skinInside(Weave weave, int[] mouth, double[] net, Half half, Woven upper, Woven lower) {
        int[] numbers = mouth.clone();
        double[] at = new double[2 * mouth.length];
        for (int ray = 0; ray < mouth.length; ray++) {
            at[2 * ray] = net[3 * (surface.rings() * ray + surface.mouthRing())];
            at[2 * ray + 1] = net[3 * (surface.rings() * ray + surface.mouthRing()) + 1];
        }
        Parting parting = Parting.of(Loop.of(at), List.of(), form.creases(), form.step());
        int[] all = Arrays.copyOf(numbers, parting.points());
        for (int i = numbers.length; i < all.length; i++) {
            all[i] = -1;
        }
        for (Parting.Piece piece : parting.pieces()) {
            Loop loop = parting.loop(piece.loop());
            if (half == Half.WHOLE || starboard(loop) == (half == Half.STARBOARD)) {
                int[] round = piece.loop().stream().mapToInt(i -> {
                    if (all[i] < 0) {
                        all[i] = weave.point(parting.u(i), parting.v(i), frame.outside(parting.u(i), parting.v(i)));
                    }
                    return all[i];
                }).toArray();
                weave.face(Looks.DOWN, Fill.of(loop, List.of(), form.step()), round,
                    (u, v) -> weave.point(u, v, frame.outside(u, v)));
            }
        }
        if (half != Half.WHOLE) {
            centreFace(weave, parting, all, half, upper, lower, net);
        }
    }

    private static boolean starboard(Loop loop) {
        double sum = 0;
        for (int i = 0; i < loop.size(); i++) {
            sum += loop.v(i);
        }
        return sum > 0;
    }

    private void centreFace(Weave weave, Parting parting, int[] all, Half half, Woven upper, Woven lower, double[] net) {
        int aft = surface.rays().aft(middle());
        int fore = surface.rays().fore(middle());
        List<double[]> places = new ArrayList<>();
        List<Integer> numbers = new ArrayList<>();
        for (int ring = surface.rings() - 1; ring > surface.mouthRing(); ring--) {
            add(numbers, places, lower.rings[ring][fore], net, fore, ring, true);
        }
        IntStream.range(0, parting.points()).filter(i -> all[i] >= 0 && Math.abs(parting.v(i)) < 1e-7).boxed()
            .sorted((a, b) -> Double.compare(parting.u(a), parting.u(b)))
            .forEach(i -> addTo(numbers, places, all[i], parting.u(i), frame.outside(parting.u(i), parting.v(i))));
        for (int ring = surface.mouthRing() + 1; ring < surface.rings(); ring++) {
            add(numbers, places, lower.rings[ring][aft], net, aft, ring, true);
        }
        for (int ring = surface.rings() - 1; ring >= 0; ring--) {
            add(numbers, places, upper.rings[ring][aft], net, aft, ring, false);
        }
        for (int ring = 0; ring < surface.rings(); ring++) {
            add(numbers, places, upper.rings[ring][fore], net, fore, ring, false);
        }
        if (numbers.get(numbers.size() - 1).equals(numbers.get(0))) {
            numbers.remove(numbers.size() - 1);
            places.remove(places.size() - 1);
        }
        Loop loop = Loop.of(places.stream().flatMapToDouble(Arrays::stream).toArray());
        weave.face(half == Half.STARBOARD ? Looks.UP : Looks.DOWN, Fill.of(loop, List.of(), LARGE),
            numbers.stream().mapToInt(Integer::intValue).toArray(), (u, w) -> weave.point(u, 0, w));
    }

    private void add(List<Integer> numbers, List<double[]> places, int number, double[] net, int ray, int ring, boolean onSkin) {
        int at = 3 * (surface.rings() * ray + ring);
        addTo(numbers, places, number, net[at], onSkin ? frame.outside(net[at], net[at + 1]) : net[at + 2]);
    }

    private static void addTo(List<Integer> numbers, List<double[]> places, int number, double u, double w) {
        if (numbers.isEmpty() || numbers.get(numbers.size() - 1) != number) {
            numbers.add(number);
            places.add(new double[] {u, w});
        }
    }

    /** Of the skin inside the opening [m2]. */
    double openingArea() {
        return openingArea;
    }

    /**
     * The former with a rim along the skin round it.
     *
     * @param width of the rim [m]
     */
    Solid formerWithRim(double width, double shrinkage) throws CannotBeBuilt {
        double[] net = surface.net(0);
        Weave weave = new Weave(enlarged(1 + shrinkage));
        Woven upper = weave(weave, net);
        upperFace(weave, upper, net, range(Half.WHOLE), Half.WHOLE, form.depth());
        Loop opening = ring(net, surface.rings() - 1);
        Loop rim = rim(opening, width);
        int[] top = lifted(weave, rim, 0);
        int[] bottom = lifted(weave, rim, -RIM);
        rimFace(weave, Parting.of(rim, List.of(opening), form.creases(), form.step()), concat(top, upper.last()), 0, Looks.UP);
        rimFace(weave, Parting.of(rim, List.of(), form.creases(), form.step()), bottom, -RIM, Looks.DOWN);
        weave.band(Looks.UP, bottom, top);
        return sound(weave);
    }

    private Loop rim(Loop opening, double width) {
        List<FlatPoint> grown = PocketLines.outside(IntStream.range(0, opening.size())
            .mapToObj(i -> new FlatPoint(opening.u(i), opening.v(i))).toList(), width);
        return Parting.crossed(Loop.of(grown.stream().flatMapToDouble(point -> DoubleStream.of(point.u(), point.v())).toArray())
            .parted(form.step()), form.creases());
    }

    /** Where a rim of that width ends on the skin; NaN off it. */
    List<Vector3D> rimPlaces(double width) throws CannotBeBuilt {
        Loop rim = rim(ring(surface.net(0), surface.rings() - 1), width);
        return IntStream.range(0, rim.size()).mapToObj(i -> frame.toHull(rim.u(i), rim.v(i), frame.outside(rim.u(i), rim.v(i)))).toList();
    }

    private Loop ring(double[] net, int ring) {
        double[] at = new double[2 * surface.rays().count()];
        for (int ray = 0; ray < surface.rays().count(); ray++) {
            at[2 * ray] = net[3 * (surface.rings() * ray + ring)];
            at[2 * ray + 1] = net[3 * (surface.rings() * ray + ring) + 1];
        }
        return Loop.of(at);
    }

    private int[] lifted(Weave weave, Loop loop, double by) throws CannotBeBuilt {
        int[] numbers = new int[loop.size()];
        for (int i = 0; i < numbers.length; i++) {
            double w = frame.outside(loop.u(i), loop.v(i));
            if (w != w) {
                throw new CannotBeBuilt("the former's rim runs off the skin", "a narrower rim, or none");
            }
            numbers[i] = weave.point(loop.u(i), loop.v(i), w + by);
        }
        return numbers;
    }

    private static int[] concat(int[] one, int[] other) {
        int[] both = Arrays.copyOf(one, one.length + other.length);
        System.arraycopy(other, 0, both, one.length, other.length);
        return both;
    }

    private void rimFace(Weave weave, Parting parting, int[] known, double by, Looks looks) {
        int[] numbers = Arrays.copyOf(known, parting.points());
        for (int i = known.length; i < numbers.length; i++) {
            numbers[i] = weave.point(parting.u(i), parting.v(i), frame.outside(parting.u(i), parting.v(i)) + by);
        }
        for (Parting.Piece piece : parting.pieces()) {
            List<Loop> holes = piece.hole().isEmpty() ? List.of() : List.of(parting.loop(piece.hole()));
            int[] round = IntStream.concat(piece.loop().stream().mapToInt(i -> numbers[i]), piece.hole().stream().mapToInt(i -> numbers[i])).toArray();
            weave.face(looks, Fill.of(parting.loop(piece.loop()), holes, form.step()), round,
                (u, v) -> weave.point(u, v, frame.outside(u, v) + by));
        }
    }

    /** A layer of the laminate, from so far behind the finished face to farther; its rim where both meet the skin. */
    Solid layer(double from, double to) throws CannotBeBuilt {
        double[] outside = surface.net(from);
        double[] inside = surface.net(to);
        Weave weave = new Weave(frame);
        Woven outer = weave(weave, outside);
        Woven inner = weave(weave, inside);
        int[] range = range(Half.WHOLE);
        upperFace(weave, inner, inside, range, Half.WHOLE, form.depth() + to);
        for (int ring = surface.rings() - 1; ring > 0; ring--) {
            weave.band(Looks.DOWN, outer.rings[ring], outer.rings[ring - 1]);
        }
        floor(weave, Looks.DOWN, outer.rings[0], outside, range, form.depth() + from);
        weave.band(Looks.UP, outer.last(), inner.last());
        return sound(weave);
    }
}
