package org.garboard.cutout.transom;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.Drive;
import org.garboard.craft.Transducer;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.FlatPoint;
import org.garboard.cutout.Lengths;
import org.garboard.cutout.part.BodyEnvelope;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.cutout.part.SkinPlate;
import org.garboard.cutout.template.Template;
import org.garboard.cutout.template.Template.Kind;
import org.garboard.cutout.template.Template.Mark;
import org.garboard.cutout.template.Template.RoundHole;
import org.garboard.cutout.transom.BracketWish.Screw;
import org.garboard.cutout.transom.TransomBracket.ScrewPlace;
import org.garboard.hull.Hull;
import org.garboard.solid.Height;
import org.garboard.solid.Loop;
import org.garboard.solid.Placement;

/** Places a body behind the transom, its bracket on a board that is cut to the transom's lower edge. */
public final class BracketCut {
    /** The board's foot stays above the water that leaves the bottom's edge [m]; our choice. */
    private static final double FOOT = 0.010;
    /** Board beside and over a screw [m]; our choice. */
    private static final double LAND = 0.020;
    /** The body's forward end stays abaft of board and transom [m]; our choice, it swings up. */
    private static final double CLEAR = 0.010;
    /** Pieces of the board's foot: of a round bottom 0.2 m wide they stray by hundredths of a millimetre. */
    private static final int PIECES = 24;
    /** An edge that strays less from a chord is straight [m]; our choice. */
    private static final double STRAIGHT = 2e-6;

    private final Hull hull;
    private final Transducer body;
    private final BracketWish wish;
    private final List<Screw> screws;
    private final double boardWidth;
    private final TransomPlane plane;

    private BracketCut(Hull hull, Transducer body, BracketWish wish, double y) throws CannotBeBuilt {
        this.hull = hull;
        this.body = body;
        this.wish = wish;
        this.screws = wish.screwsFor(body);
        double spread = screws.stream().mapToDouble(screw -> Math.abs(screw.across()) + screw.diameter() / 2).max().orElseThrow();
        this.boardWidth = Math.max(body.width(), 2 * (spread + LAND));
        requireRoom(y);
        double tallest = screws.stream().mapToDouble(Screw::aboveFace).max().orElseThrow();
        this.plane = TransomPlane.at(hull, y, boardWidth, tallest + LAND).orElseThrow(() ->
            new CannotBeBuilt("the transom has no lower edge at y = " + Lengths.mm(y), "a place inside its sides"));
    }

    /**
     * Makes the parts at a place of the transom's lower edge.
     *
     * @param features what is on the bottom ahead of it
     * @param drive what drives the boat, where it is told
     * @param y of the body's middle, to starboard [m]
     * @throws CannotBeBuilt with the figure that fails and what would work
     */
    public static TransomBracket cut(Hull hull, Transducer body, BracketWish wish, BottomFeatures features, Optional<Drive> drive, double y)
            throws CannotBeBuilt {
        wish.check();
        return new BracketCut(hull, body, wish, y).build(features, drive);
    }

    /** Between the keel line and the outer corner of the transom. */
    private void requireRoom(double y) throws CannotBeBuilt {
        double inner = hull.lines().get(hull.skinLine()).y(hull.bottomEnd());
        double outer = hull.bottomEdge().y(hull.bottomEnd());
        double half = boardWidth / 2;
        if (outer - inner < boardWidth) {
            throw new CannotBeBuilt("the board is " + Lengths.mm(boardWidth) + " wide, a side of the transom " + Lengths.mm(outer - inner),
                "a board of " + Lengths.mmDown(outer - inner) + " at most: screws closer together, or a narrower body");
        }
        double side = Math.abs(y);
        if (!(side - half >= inner - 1e-9 && side + half <= outer + 1e-9)) {
            double nearest = Math.max(inner + half, Math.min(outer - half, side));
            throw new CannotBeBuilt("the board, " + Lengths.mm(boardWidth) + " wide, reaches over the " + (side - half < inner ? "keel line" : "corner of the transom")
                + " from " + Lengths.mm(side) + " off the centreline", Lengths.mm(nearest) + " off the centreline");
        }
    }

    private TransomBracket build(BottomFeatures features, Optional<Drive> drive) throws CannotBeBuilt {
        double half = body.width() / 2;
        double lowest = Math.min(plane.edgeHeight(0), Math.min(plane.edgeHeight(-half), plane.edgeHeight(half)));
        double face = lowest - wish.drop();
        double middle = plane.edgeHeight(0) - face;
        List<ScrewPlace> places = screws(face);
        double top = Math.max(places.stream().mapToDouble(screw -> screw.up() + screw.diameter() / 2).max().orElseThrow(), highestFoot()) + LAND;
        requireTransom(top);
        double highest = plane.origin().getZ() - middle + body.height();
        double ahead = Math.max(0, plane.aftermost(plane.origin().getZ(), Math.max(highest, plane.origin().getZ()), body.width()) - plane.origin().getX())
            + wish.board() / Math.cos(plane.rake().radians()) + CLEAR;
        List<NamedSolid> solids = List.of(new NamedSolid("transducer-body", BodyEnvelope.of(level(ahead, face), body, 0, body.height(), wish.chord())),
            new NamedSolid("transom-board", SkinPlate.between(plane, board(top), holes(places), 1, Height.level(0), Height.level(wish.board()))));
        double inboard = plane.origin().getY() < 0 ? half : -half;
        return new TransomBracket(plane.origin(), plane.rake(), plane.edgeHeight(inboard) - face, middle, plane.edgeHeight(-inboard) - face, ahead,
            places, boardWidth, FOOT, top, wish.board(), round(top), fromPropeller(drive),
            new Beside(plane.origin().getX(), plane.origin().getY(), body.width()).of(features), solids, List.of(template(places, face, top)));
    }

    private List<ScrewPlace> screws(double face) throws CannotBeBuilt {
        List<ScrewPlace> places = new ArrayList<>();
        double level = plane.upFor(face - plane.origin().getZ());
        for (Screw screw : screws) {
            double up = level + screw.aboveFace();
            double least = plane.edge(screw.across()) + FOOT + LAND / 2 + screw.diameter() / 2;
            if (up < least) {
                throw new CannotBeBuilt("a screw " + Lengths.mm(screw.aboveFace()) + " over the face comes " + Lengths.mm(up - plane.edge(screw.across()))
                    + " over the transom's edge", "a screw " + Lengths.mmUp(screw.aboveFace() + least - up) + " or more over the face");
            }
            places.add(new ScrewPlace(screw.across(), up, screw.diameter()));
        }
        return places;
    }

    private void requireTransom(double top) throws CannotBeBuilt {
        double most = plane.upFor(plane.sheer() - plane.origin().getZ());
        if (top > most) {
            throw new CannotBeBuilt("the board's top would be " + Lengths.mm(top) + " up the transom, which ends at " + Lengths.mm(most),
                "a board whose top lies " + Lengths.mmUp(top - most) + " lower: lower screws, or a narrower board");
        }
    }

    /** Of the body: its forward end abaft of the transom, its face level at a height over base. */
    private Placement level(double ahead, double face) {
        double x = plane.origin().getX() + ahead + body.length() / 2;
        double y = plane.origin().getY();
        return (u, v, w, out, at) -> {
            out[at] = x + u;
            out[at + 1] = y + v;
            out[at + 2] = face + w;
        };
    }

    /** Its foot parallel to the transom's edge, a corner only where that bends. */
    private Loop board(double top) {
        double half = boardWidth / 2;
        double[] points = new double[2 * (PIECES + 3)];
        int count = 0;
        for (int i = 0; i <= PIECES; i++) {
            double u = -half + boardWidth * i / PIECES;
            if (i == 0 || i == PIECES || bends(points[2 * count - 2], u, u + boardWidth / PIECES)) {
                points[2 * count] = u;
                points[2 * count + 1] = plane.edge(u) + FOOT;
                count++;
            }
        }
        points[2 * count] = half;
        points[2 * count + 1] = top;
        points[2 * count + 2] = -half;
        points[2 * count + 3] = top;
        return Loop.of(Arrays.copyOf(points, 2 * count + 4));
    }

    private boolean bends(double before, double at, double after) {
        double share = (at - before) / (after - before);
        return Math.abs(plane.edge(at) - (1 - share) * plane.edge(before) - share * plane.edge(after)) > STRAIGHT;
    }

    /** A wide board reaches far up a V. */
    private double highestFoot() {
        double highest = FOOT;
        for (int i = 0; i <= PIECES; i++) {
            highest = Math.max(highest, plane.edge(boardWidth * i / PIECES - boardWidth / 2) + FOOT);
        }
        return highest;
    }

    private List<Loop> holes(List<ScrewPlace> places) {
        return places.stream().map(screw -> Loop.circle(screw.across(), screw.up(), screw.diameter() / 2, wish.chord())).toList();
    }

    private double round(double top) {
        double most = 0;
        for (int i = -4; i <= 4; i++) {
            for (int k = 0; k <= 4; k++) {
                double u = i * boardWidth / 8;
                double foot = plane.edge(u) + FOOT;
                most = Math.max(most, Math.abs(plane.stands(u, foot + k * (top - foot) / 4)));
            }
        }
        return most;
    }

    private OptionalDouble fromPropeller(Optional<Drive> drive) {
        return drive.filter(told -> told.number() == 1 && (told.kind() == Drive.Kind.OUTBOARD || told.kind() == Drive.Kind.STERNDRIVE)).isPresent()
            ? OptionalDouble.of(Math.abs(plane.origin().getY())) : OptionalDouble.empty();
    }

    /** To be laid on the transom, its foot at the level of the face, below the edge. */
    private Template template(List<ScrewPlace> places, double face, double top) {
        double half = boardWidth / 2;
        double level = plane.upFor(face - plane.origin().getZ());
        double foot = level - LAND;
        List<FlatPoint> outline = List.of(new FlatPoint(-half, foot), new FlatPoint(half, foot), new FlatPoint(half, top), new FlatPoint(-half, top));
        List<FlatPoint> edge = new ArrayList<>();
        for (int i = 0; i <= PIECES; i++) {
            double u = -half + boardWidth * i / PIECES;
            edge.add(new FlatPoint(u, plane.edge(u)));
        }
        return new Template("transom-drilling", Template.Up.AFT, outline, List.of(),
            places.stream().map(screw -> new RoundHole(new FlatPoint(screw.across(), screw.up()), screw.diameter())).toList(),
            List.of(new Mark(Kind.TRANSOM_EDGE, edge), new Mark(Kind.FACE_LEVEL, List.of(new FlatPoint(-half, level), new FlatPoint(half, level))),
                new Mark(Kind.PLUMB, List.of(new FlatPoint(0, foot), new FlatPoint(0, top)))), 0);
    }
}
