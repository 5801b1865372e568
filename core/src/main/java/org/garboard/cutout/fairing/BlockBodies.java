package org.garboard.cutout.fairing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.cutout.skin.AxisFrame;
import org.garboard.solid.Draft;
import org.garboard.solid.Draft.Looks;
import org.garboard.solid.Draft.Rim;
import org.garboard.solid.Fill;
import org.garboard.solid.Height;
import org.garboard.solid.Loop;
import org.garboard.solid.Solid;

/**
 * The outer block as a closed body: its face a plane, a recess for the body in it, its hull side the true skin.
 *
 * @param stem the stem's hole, inside the recess; empty where there is no stem
 * @param holes right through
 */
record BlockBodies(AxisFrame frame, Loop outline, Loop recess, Optional<Loop> stem, List<Loop> holes, double step) {

    /** Between face and skin. */
    Solid outer(double face, double roof) {
        Draft draft = new Draft(frame);
        Height low = Height.level(face);
        Height ceiling = Height.level(roof);
        Height skin = frame::outside;
        Rim edge = draft.rim(outline, low);
        Rim brim = draft.rim(outline, skin);
        Rim mouth = draft.rim(recess, low);
        Rim deep = draft.rim(recess, ceiling);
        List<Rim> starts = holes.stream().map(hole -> draft.rim(hole, low)).toList();
        List<Rim> ends = holes.stream().map(hole -> draft.rim(hole, skin)).toList();
        List<Rim> stemLow = stem.map(loop -> List.of(draft.rim(loop, ceiling))).orElse(List.of());
        List<Rim> stemHigh = stem.map(loop -> List.of(draft.rim(loop, skin))).orElse(List.of());
        List<Loop> stemLoop = stem.map(List::of).orElse(List.of());
        draft.face(Looks.DOWN, Fill.of(outline, join(List.of(recess), holes), step), low, join(List.of(edge, mouth), starts));
        draft.wallInside(mouth, deep);
        draft.face(Looks.DOWN, Fill.of(recess, stemLoop, step), ceiling, join(List.of(deep), stemLow));
        draft.face(Looks.UP, Fill.of(outline, join(stemLoop, holes), step), skin, join(List.of(brim), join(stemHigh, ends)));
        draft.wallOutside(edge, brim);
        for (int i = 0; i < holes.size(); i++) {
            draft.wallInside(starts.get(i), ends.get(i));
        }
        for (int i = 0; i < stemLow.size(); i++) {
            draft.wallInside(stemLow.get(i), stemHigh.get(i));
        }
        return draft.solid();
    }

    private static <T> List<T> join(List<T> one, List<T> other) {
        List<T> all = new ArrayList<>(one);
        all.addAll(other);
        return all;
    }
}
