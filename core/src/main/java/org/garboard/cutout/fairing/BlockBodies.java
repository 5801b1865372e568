package org.garboard.cutout.fairing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.garboard.cutout.skin.AxisFrame;
import org.garboard.solid.Draft.Looks;
import org.garboard.solid.Fill;
import org.garboard.solid.Height;
import org.garboard.solid.Loop;
import org.garboard.solid.Solid;
import org.garboard.solid.Weave;

/**
 * The outer block as a closed body: its face a plane with the nose rounded, a recess for the body in it, its hull side the true skin.
 *
 * @param stem the stem's hole, inside the recess; empty where there is no stem
 * @param bolt its hole, abaft of the recess
 * @param pin its hole, through the round
 */
record BlockBodies(AxisFrame frame, Loop outline, Loop recess, Optional<Loop> stem, Loop bolt, Loop pin, double step, double chord) {
    /** No triangle of a plane face needs to be smaller [m]. */
    private static final double LARGE = 10;

    /**
     * Between face and skin.
     *
     * @param face height of the plane face
     * @param roof height of the recess's
     * @param nose u of the nose
     */
    Solid outer(double face, double roof, NoseRound round, double nose) {
        double[] stations = Arrays.stream(round.stations(chord)).map(back -> nose + back).toArray();
        RoundedFace rounded = new RoundedFace(outline, pin, stations);
        Height low = (u, v) -> face + round.back(u - nose);
        Height skin = frame::outside;
        Weave weave = new Weave(frame);
        int[] edge = ring(weave, rounded.outline(), low);
        int[] pinLow = ring(weave, rounded.hole(), low);
        int[] mouth = ring(weave, recess, Height.level(face));
        int[] boltLow = ring(weave, bolt, Height.level(face));
        rounded.lay(weave, edge, pinLow, List.of(recess, bolt), List.of(mouth, boltLow));
        int[] deep = ring(weave, recess, Height.level(roof));
        weave.band(Looks.DOWN, mouth, deep);
        int[] stemLow = stem.map(loop -> ring(weave, loop, Height.level(roof))).orElse(new int[0]);
        weave.face(Looks.DOWN, Fill.of(recess, stem.map(List::of).orElse(List.of()), LARGE), joined(deep, stemLow), (u, v) -> weave.point(u, v, roof));
        List<Loop> holes = new ArrayList<>(List.of(rounded.hole(), bolt));
        List<int[]> lows = new ArrayList<>(List.of(pinLow, boltLow));
        stem.ifPresent(loop -> {
            holes.add(loop);
            lows.add(stemLow);
        });
        int[] brim = ring(weave, rounded.outline(), skin);
        int[] all = brim;
        for (int i = 0; i < holes.size(); i++) {
            int[] high = ring(weave, holes.get(i), skin);
            weave.band(Looks.DOWN, lows.get(i), high);
            all = joined(all, high);
        }
        weave.band(Looks.UP, edge, brim);
        weave.face(Looks.UP, Fill.of(rounded.outline(), holes, step), all, (u, v) -> weave.point(u, v, skin.at(u, v)));
        return weave.solid();
    }

    private static int[] ring(Weave weave, Loop loop, Height height) {
        return IntStream.range(0, loop.size()).map(i -> weave.point(loop.u(i), loop.v(i), height.at(loop.u(i), loop.v(i)))).toArray();
    }

    private static int[] joined(int[] one, int[] other) {
        int[] both = Arrays.copyOf(one, one.length + other.length);
        System.arraycopy(other, 0, both, one.length, other.length);
        return both;
    }
}
