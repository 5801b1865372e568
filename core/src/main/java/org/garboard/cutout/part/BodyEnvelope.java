package org.garboard.cutout.part;

import java.util.List;
import org.garboard.craft.Transducer;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.solid.Draft;
import org.garboard.solid.Draft.Looks;
import org.garboard.solid.Draft.Rim;
import org.garboard.solid.Fill;
import org.garboard.solid.Height;
import org.garboard.solid.Loop;
import org.garboard.solid.Placement;
import org.garboard.solid.Solid;

/** The transducer's body as its maker dimensions it: an upright prism, and its stem on top. */
public final class BodyEnvelope {
    private static final double STEP = 0.5;
    /** A stem as wide as the body has no shoulder to draw [m]. */
    private static final double SHOULDER = 0.0005;

    private BodyEnvelope() {
    }

    /**
     * The envelope with its face at a height of a frame, u along it.
     *
     * @param stemTop height of the stem's end [m]
     */
    public static Solid of(Placement frame, Transducer body, double face, double stemTop, double chord) throws CannotBeBuilt {
        Loop outline = BodyOutline.of(body).loop(chord, STEP);
        Draft draft = new Draft(frame);
        Height top = Height.level(face + body.height());
        Rim low = draft.rim(outline, Height.level(face));
        Rim shoulder = draft.rim(outline, top);
        draft.face(Looks.DOWN, Fill.of(outline, List.of(), STEP), Height.level(face), List.of(low));
        draft.wallOutside(low, shoulder);
        double radius = body.stemDiameter() / 2;
        if (radius > 0 && radius < Math.min(body.length(), body.width()) / 2 - SHOULDER && stemTop > face + body.height() + SHOULDER) {
            Loop stem = Loop.circle(0, 0, radius, chord);
            Rim foot = draft.rim(stem, top);
            Rim end = draft.rim(stem, Height.level(stemTop));
            draft.face(Looks.UP, Fill.of(outline, List.of(stem), STEP), top, List.of(shoulder, foot));
            draft.wallOutside(foot, end);
            draft.face(Looks.UP, Fill.of(stem, List.of(), STEP), Height.level(stemTop), List.of(end));
        } else {
            draft.face(Looks.UP, Fill.of(outline, List.of(), STEP), top, List.of(shoulder));
        }
        return draft.solid();
    }
}
