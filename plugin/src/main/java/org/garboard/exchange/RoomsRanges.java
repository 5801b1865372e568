package org.garboard.exchange;

import java.util.LinkedHashMap;
import java.util.Map;
import org.garboard.exchange.xml.job.Length;
import org.garboard.exchange.xml.job.LookedAt;
import org.garboard.exchange.xml.job.Room;
import org.garboard.exchange.xml.job.Rooms;
import org.garboard.exchange.xml.job.Support;
import org.garboard.exchange.xml.job.Supports;
import org.garboard.exchange.xml.job.TransferPoint;
import org.garboard.exchange.xml.job.TransomInside;
import org.glassfish.jaxb.core.Locatable;

/** The ranges of boxes inside and of what the boat rests on; like {@link JobRanges}, the upper ends catch wrong units. */
final class RoomsRanges {
    private static final double THICKEST_TRANSOM = 0.5;
    private static final double LONGEST = 100;
    private static final double WIDEST = 10;

    private final JobFaults faults;
    private final Map<String, Locatable> datums = new LinkedHashMap<>();

    RoomsRanges(JobFaults faults) {
        this.faults = faults;
    }

    void check(Rooms rooms) {
        for (Object each : rooms.getTransomInsideOrTransferPointOrLookedAt()) {
            if (each instanceof TransomInside transom) {
                faults.aboveZero("transom-thickness", transom.getTransomThickness(), THICKEST_TRANSOM);
                datum(transom.getName(), transom);
            } else if (each instanceof TransferPoint point) {
                faults.between("ahead-of-after-end", point.getAheadOfAfterEnd(), 0, LONGEST);
                datum(point.getName(), point);
            }
        }
        for (Object each : rooms.getTransomInsideOrTransferPointOrLookedAt()) {
            if (each instanceof LookedAt stretch) {
                from(stretch.getFrom(), stretch);
                ahead(stretch.getAheadFrom(), stretch.getAheadTo());
            } else if (each instanceof Room room) {
                from(room.getFrom(), room);
                ahead(room.getAheadFrom(), room.getAheadTo());
                out(room.getOutFrom(), room.getOutTo());
                faults.between("above-skin", room.getAboveSkin(), 0, WIDEST);
            }
        }
    }

    void check(Supports supports) {
        for (Support support : supports.getSupport()) {
            ahead(support.getAheadFrom(), support.getAheadTo());
            out(support.getOutFrom(), support.getOutTo());
        }
    }

    private void datum(String name, Locatable element) {
        if (name != null && datums.putIfAbsent(name, element) != null) {
            faults.add(element, "\"" + name + "\" names something to measure from already; name each apart");
        }
    }

    private void from(String name, Locatable element) {
        if (name != null && !datums.containsKey(name)) {
            faults.add(element, "from=\"" + name + "\" names nothing to measure from; "
                + (datums.isEmpty() ? "write a <transom-inside> or a <transfer-point> and name that" : "expected " + String.join(" or ", datums.keySet())));
        }
    }

    private void ahead(Length from, Length to) {
        faults.between("ahead-from", from, -LONGEST, LONGEST);
        faults.between("ahead-to", to, -LONGEST, LONGEST);
        rising("ahead", from, to);
    }

    private void out(Length from, Length to) {
        faults.between("out-from", from, 0, WIDEST);
        faults.between("out-to", to, 0, WIDEST);
        rising("out", from, to);
    }

    private void rising(String which, Length from, Length to) {
        if (Lengths.isWhole(from) && Lengths.isWhole(to) && !(Lengths.metres(from) < Lengths.metres(to))) {
            faults.add(to, "<" + which + "-to> is " + Lengths.asWritten(to) + " and <" + which + "-from> " + Lengths.asWritten(from)
                + "; the first must be more");
        }
    }
}
