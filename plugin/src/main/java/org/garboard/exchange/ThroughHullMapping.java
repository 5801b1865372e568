package org.garboard.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.garboard.craft.Sides;
import org.garboard.cutout.fairing.FairingWish;
import org.garboard.cutout.fairing.Planform;
import org.garboard.cutout.part.ThroughHullWish;
import org.garboard.cutout.transom.BracketTold;
import org.garboard.cutout.transom.BracketWish.Screw;
import org.garboard.exchange.xml.job.BracketScrew;
import org.garboard.exchange.xml.job.Fairing;
import org.garboard.exchange.xml.job.Length;
import org.garboard.exchange.xml.job.ThroughHull;
import org.garboard.units.Angle;

/** What a job asks of a way through the skin, of a fairing block and of a transom mount, its defaults filled in; skin and stem stand elsewhere in it. */
final class ThroughHullMapping {

    private ThroughHullMapping() {
    }

    static FairingWish toWish(TransducerTask task) {
        ThroughHull through = task.throughHull().orElseGet(ThroughHull::new);
        Fairing fairing = task.fairing().orElseGet(Fairing::new);
        return new FairingWish(
            fairing.getPlanform() == null ? Planform.NACA_00XX : switch (fairing.getPlanform()) {
                case NACA_00_XX -> Planform.NACA_00XX;
                case HALF_ELLIPSES -> Planform.HALF_ELLIPSES;
            },
            fairing.getSlenderness() == null ? FairingWish.SLENDERNESS : fairing.getSlenderness().doubleValue(),
            metres(fairing.getFaceHeight()),
            Angle.ofDegrees(fairing.getTrailingEdgeLower() == null ? FairingWish.TRAILING_EDGE_LOWER_DEG
                : fairing.getTrailingEdgeLower().getValue().doubleValue()),
            Angle.ofDegrees(0),
            new ThroughHullWish(Optional.empty(),
                metres(through.getBedding()).orElse(ThroughHullWish.GAP), ThroughHullWish.OVERLAP, ThroughHullWish.BLOCK,
                OptionalDouble.empty(), metres(through.getChordError()).orElse(ThroughHullWish.CHORD)));
    }

    static BracketTold toBracket(TransducerTask task) {
        if (task.bracket().isEmpty()) {
            return BracketTold.NOTHING;
        }
        List<Screw> screws = new ArrayList<>();
        for (BracketScrew screw : task.bracket().get().getScrew()) {
            double off = Lengths.metres(screw.getOffMiddle());
            double above = Lengths.metres(screw.getAboveFace());
            double diameter = Lengths.metres(screw.getDiameter());
            Sides sides = SkinMapping.sides(screw.getSide());
            if (sides != Sides.STARBOARD && off > 0) {
                screws.add(new Screw(-off, above, diameter));
            }
            if (sides != Sides.PORT || off == 0) {
                screws.add(new Screw(off, above, diameter));
            }
        }
        return new BracketTold(metres(task.bracket().get().getFaceBelow()), screws);
    }

    private static OptionalDouble metres(Length length) {
        return length == null ? OptionalDouble.empty() : OptionalDouble.of(Lengths.metres(length));
    }
}
