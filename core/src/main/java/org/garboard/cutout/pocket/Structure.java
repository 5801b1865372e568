package org.garboard.cutout.pocket;

import java.util.List;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.Lengths;
import org.garboard.inside.LaidInside;
import org.garboard.inside.Room;
import org.garboard.inside.Room.Kind;
import org.garboard.inside.Span;

/** What stands behind a pocket, as far as it is told: some of it refuses the pocket, frames and stringers are counted. */
final class Structure {

    private Structure() {
    }

    /**
     * Frames and stringers behind a stretch of bottom.
     *
     * @param along x from and to of what is cut [m]
     * @param athwart y of it [m]
     * @param height of the pocket's laminate above the inside of the skin [m]
     * @throws CannotBeBuilt through what no pocket goes through, or into what stands too low over it
     */
    static List<String> met(LaidInside inside, Span along, Span athwart, double height) throws CannotBeBuilt {
        List<Room> behind = inside.behind(along, athwart);
        for (Room room : behind) {
            if (isUntouchable(room.kind())) {
                throw new CannotBeBuilt("the pocket would go through a " + room.kind().words() + " (" + room.name() + "), which lies behind x = "
                    + Lengths.mm(along.from()) + " to " + Lengths.mm(along.to()), "a site clear of it");
            }
            if (!isFraming(room.kind()) && room.above().from() < height) {
                throw new CannotBeBuilt("the pocket stands " + Lengths.mm(height) + " above the inside of the skin, and a " + room.kind().words() + " ("
                    + room.name() + ") begins at " + Lengths.mm(room.above().from()), "a pocket less deep by "
                    + Lengths.mmUp(height - room.above().from()) + ", or a site clear of it");
            }
        }
        return behind.stream().filter(room -> isFraming(room.kind()) && room.above().from() < height)
            .map(room -> room.kind().words() + " (" + room.name() + ")").distinct().toList();
    }

    /** Common practice, no source: no pocket through keelson, floors, bearers, keel bolts; and none into fuel. */
    private static boolean isUntouchable(Kind kind) {
        return switch (kind) {
            case KEELSON, KEEL_BOLTS, FLOOR, ENGINE_BED, FUEL_TANK, FUEL_LINE -> true;
            default -> false;
        };
    }

    private static boolean isFraming(Kind kind) {
        return kind == Kind.STRINGER || kind == Kind.BULKHEAD;
    }
}
