package org.garboard.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.garboard.exchange.xml.job.Length;
import org.garboard.exchange.xml.job.LookedAt;
import org.garboard.exchange.xml.job.Rooms;
import org.garboard.exchange.xml.job.TransferPoint;
import org.garboard.exchange.xml.job.TransomInside;
import org.garboard.handling.Support;
import org.garboard.handling.Supports;
import org.garboard.inside.Inside;
import org.garboard.inside.InsideDatum;
import org.garboard.inside.Room;
import org.garboard.inside.Seen;
import org.garboard.inside.Span;

/** What is inside the boat of a job, and what she rests on. */
final class RoomsMapping {

    private RoomsMapping() {
    }

    static Inside toInside(Rooms bean) {
        List<InsideDatum> datums = new ArrayList<>();
        List<Room> rooms = new ArrayList<>();
        List<Seen> seen = new ArrayList<>();
        for (Object each : bean.getTransomInsideOrTransferPointOrLookedAt()) {
            if (each instanceof TransomInside transom) {
                datums.add(new InsideDatum.Transom(transom.getName(), Lengths.metres(transom.getTransomThickness())));
            } else if (each instanceof TransferPoint point) {
                datums.add(new InsideDatum.TransferPoint(point.getName(), Lengths.metres(point.getAheadOfAfterEnd())));
            } else if (each instanceof LookedAt stretch) {
                seen.add(new Seen(stretch.getFrom(), span(stretch.getAheadFrom(), stretch.getAheadTo())));
            } else {
                rooms.add(room((org.garboard.exchange.xml.job.Room) each));
            }
        }
        return new Inside(datums, rooms, seen);
    }

    private static Room room(org.garboard.exchange.xml.job.Room bean) {
        double above = bean.getAboveSkin() == null ? 0 : Lengths.metres(bean.getAboveSkin());
        return new Room(Room.Kind.valueOf(bean.getKind().value().toUpperCase(Locale.ROOT).replace('-', '_')), bean.getName(), bean.getFrom(),
            SkinMapping.sides(bean.getSide()), span(bean.getAheadFrom(), bean.getAheadTo()), span(bean.getOutFrom(), bean.getOutTo()),
            new Span(above, Double.POSITIVE_INFINITY));
    }

    static Supports toSupports(org.garboard.exchange.xml.job.Supports bean) {
        return new Supports(bean.getSupport().stream().map(RoomsMapping::support).toList());
    }

    private static Support support(org.garboard.exchange.xml.job.Support bean) {
        Optional<Support.Out> out = Optional.ofNullable(bean.getOutFrom())
            .map(from -> new Support.Out(Lengths.metres(from), Lengths.metres(bean.getOutTo())));
        return new Support(Support.Kind.valueOf(bean.getKind().value().toUpperCase(Locale.ROOT)), bean.getName(),
            SkinMapping.sides(bean.getSide()), Lengths.metres(bean.getAheadFrom()), Lengths.metres(bean.getAheadTo()), out);
    }

    private static Span span(Length from, Length to) {
        return new Span(Lengths.metres(from), Lengths.metres(to));
    }
}
