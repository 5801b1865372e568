package org.garboard.cutout.pocket;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.cutout.CannotBeBuilt;
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

    /** What is taken out of the boat: between skin and finished face. A former for it is the same, larger by its shrinkage. */
    Solid room(Half half, double shrinkage) throws CannotBeBuilt {
        double[] net = surface.net();
        Weave weave = new Weave(enlarged(1 + shrinkage));
        WovenFace upper = WovenFace.of(weave, surface, net);
        int[] range = half == Half.WHOLE ? upper.allRound() : range(half);
        upper.lay(Looks.UP, range, form.depth());
        double above = weave.area();
        WovenFace lower = upper.onSkin(frame);
        lower.bands(Looks.DOWN, range, surface.mouthRing());
        skinInside(weave, net, half, upper, lower);
        openingArea = weave.area() - above;
        return sound(weave);
    }

    /** A mesh that does not close, or not in single precision, was asked to be finer than it can be made. */
    static Solid sound(Weave weave) throws CannotBeBuilt {
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

    /** Rays of a half, from the centreline aft to the centreline forward. */
    private int[] range(Half half) {
        int count = surface.rays().count();
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

    /** The skin inside the mouth, parted where it has an edge; of a half also the face along the centreline. */
    private void skinInside(Weave weave, double[] net, Half half, WovenFace upper, WovenFace lower) {
        Loop mouth = WovenFace.outline(surface, net, surface.mouthRing());
        Parting parting = Parting.of(mouth, List.of(), form.creases(), form.step());
        int[] all = new PartedFace(parting, form.step()).lay(weave, Looks.DOWN, lower.ring(surface.mouthRing()), frame::outside,
            loop -> half == Half.WHOLE || starboard(loop) == (half == Half.STARBOARD));
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

    private void centreFace(Weave weave, Parting parting, int[] all, Half half, WovenFace upper, WovenFace lower, double[] net) {
        int aft = surface.rays().aft(middle());
        int fore = surface.rays().fore(middle());
        List<double[]> places = new ArrayList<>();
        List<Integer> numbers = new ArrayList<>();
        for (int ring = surface.rings() - 1; ring > surface.mouthRing(); ring--) {
            add(numbers, places, lower.number(fore, ring), net, fore, ring, true);
        }
        IntStream.range(0, parting.points()).filter(i -> all[i] >= 0 && Math.abs(parting.v(i)) < 1e-7).boxed()
            .sorted((a, b) -> Double.compare(parting.u(a), parting.u(b)))
            .forEach(i -> addTo(numbers, places, all[i], parting.u(i), frame.outside(parting.u(i), parting.v(i))));
        for (int ring = surface.mouthRing() + 1; ring < surface.rings(); ring++) {
            add(numbers, places, lower.number(aft, ring), net, aft, ring, true);
        }
        for (int ring = surface.rings() - 1; ring >= 0; ring--) {
            add(numbers, places, upper.number(aft, ring), net, aft, ring, false);
        }
        for (int ring = 0; ring < surface.rings(); ring++) {
            add(numbers, places, upper.number(fore, ring), net, fore, ring, false);
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
        double[] net = surface.net();
        Loop opening = WovenFace.outline(surface, net, surface.rings() - 1);
        Loop rim = Rim.outside(form, opening, width);
        if (Rim.onSkin(form, rim).stream().anyMatch(place -> !place.isFinite())) {
            throw new CannotBeBuilt("the former's rim runs off the skin", "a narrower rim, or none");
        }
        Weave weave = new Weave(enlarged(1 + shrinkage));
        WovenFace upper = WovenFace.of(weave, surface, net);
        upper.lay(Looks.UP, upper.allRound(), form.depth());
        int[] top = PartedFace.lifted(weave, rim, frame::outside);
        int[] bottom = PartedFace.lifted(weave, rim, this::underRim);
        face(rim, List.of(opening)).lay(weave, Looks.UP, concat(top, upper.last()), frame::outside);
        face(rim, List.of()).lay(weave, Looks.DOWN, bottom, this::underRim);
        weave.band(Looks.UP, bottom, top);
        return sound(weave);
    }

    private double underRim(double u, double v) {
        return frame.outside(u, v) - RIM;
    }

    private PartedFace face(Loop rim, List<Loop> holes) {
        return new PartedFace(Parting.of(rim, holes, form.creases(), form.step()), form.step());
    }

    static int[] concat(int[] one, int[] other) {
        int[] both = Arrays.copyOf(one, one.length + other.length);
        System.arraycopy(other, 0, both, one.length, other.length);
        return both;
    }

    /** Where a rim of that width ends on the skin; NaN off it. */
    List<Vector3D> rimPlaces(double width) throws CannotBeBuilt {
        return Rim.onSkin(form, Rim.outside(form, WovenFace.outline(surface, surface.net(), surface.rings() - 1), width));
    }

    /** A layer of the laminate, from so far behind the finished face to farther; its rim where it meets the skin. */
    Solid layer(double from, double to) throws CannotBeBuilt {
        Weave weave = new Weave(frame);
        WovenFace outer = WovenFace.of(weave, surface, surface.net(from));
        WovenFace inner = WovenFace.of(weave, surface, surface.net(to));
        inner.lay(Looks.UP, inner.allRound(), form.depth() + to);
        outer.lay(Looks.DOWN, outer.allRound(), form.depth() + from);
        weave.band(Looks.UP, outer.last(), inner.last());
        return sound(weave);
    }
}
