package org.garboard.exchange;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import jakarta.xml.bind.JAXBElement;
import org.garboard.exchange.xml.job.Angle;
import org.garboard.exchange.xml.job.Beam;
import org.garboard.exchange.xml.job.Job;
import org.garboard.exchange.xml.job.Layup;
import org.garboard.exchange.xml.job.Length;
import org.garboard.exchange.xml.job.LookedAt;
import org.garboard.exchange.xml.job.MeasuredDeadrise;
import org.garboard.exchange.xml.job.PlankLine;
import org.garboard.exchange.xml.job.Room;
import org.garboard.exchange.xml.job.Rooms;
import org.garboard.exchange.xml.job.Skin;
import org.garboard.exchange.xml.job.SkinMaterial;
import org.garboard.exchange.xml.job.Support;
import org.garboard.exchange.xml.job.Transducer;
import org.garboard.exchange.xml.job.TransferPoint;
import org.garboard.exchange.xml.job.TransomInside;
import org.garboard.mount.FlushThroughHull;
import org.garboard.units.FixedDecimal;
import org.glassfish.jaxb.core.Locatable;

/** The ranges of what a job need not tell; like {@link JobRanges}, the upper ends catch wrong units. */
final class ParticularsRanges {
    private static final BigDecimal MOST_KHZ = new BigDecimal(5000);
    private static final BigDecimal STRAIGHT_DEG = new BigDecimal(180);
    private static final BigDecimal RIGHT_DEG = new BigDecimal(90);
    private static final double MOST_KG = 500;
    private static final double MOST_SKIN = 0.3;
    private static final double MOST_TRANSOM = 0.5;
    private static final double LONGEST = 100;
    private static final double WIDEST = 10;

    private final String file;
    private final XmlReading reading;
    private final List<FileFault> faults = new ArrayList<>();

    ParticularsRanges(String file, XmlReading reading) {
        this.file = file;
        this.reading = reading;
    }

    List<FileFault> faults(Job job) {
        if (job.getTransducer() != null) {
            transducer(job.getTransducer());
        }
        if (job.getSkin() != null) {
            skin(job.getSkin());
        }
        if (job.getTransducer() != null && job.getSkin() != null && job.getMounts() != null
                && job.getMounts().getTransomMountOrInHullOrFlushThroughHull().stream()
                .anyMatch(mount -> mount.getName().getLocalPart().equals(new FlushThroughHull().word()))) {
            stemThroughSkin(job.getTransducer().getStemLength(), job.getSkin());
        }
        if (job.getRooms() != null) {
            rooms(job.getRooms());
        }
        if (job.getSupports() != null) {
            job.getSupports().getSupport().forEach(this::support);
        }
        return faults;
    }

    private void transducer(Transducer body) {
        aboveZero("stem-length", body.getStemLength(), 1);
        if (body.getWeight() != null && body.getWeight().getValue() != null && body.getWeight().getUnit() != null) {
            double kilograms = TransducerMapping.kilograms(body.getWeight());
            if (!(kilograms > 0 && kilograms <= MOST_KG)) {
                add(body.getWeight(), "<weight> is " + body.getWeight().getValue().toPlainString() + " " + body.getWeight().getUnit()
                    + "; it must be more than 0 and at most 500 kg");
            }
        }
        if (body.getSound() != null) {
            body.getSound().getBeam().forEach(this::beam);
        }
    }

    private void beam(Beam beam) {
        if (beam.getFrequency() != null && beam.getFrequency().getValue() != null
                && !(beam.getFrequency().getValue().signum() > 0 && beam.getFrequency().getValue().compareTo(MOST_KHZ) <= 0)) {
            add(beam.getFrequency(), "<frequency> is " + beam.getFrequency().getValue().toPlainString()
                + " kHz; it must be more than 0 and at most 5000 kHz");
        }
        width("beam-width", beam.getBeamWidth());
        width("width-fore-and-aft", beam.getWidthForeAndAft());
        width("width-athwart", beam.getWidthAthwart());
    }

    private void width(String name, Angle angle) {
        if (angle != null && angle.getValue() != null && !(angle.getValue().signum() > 0 && angle.getValue().compareTo(STRAIGHT_DEG) < 0)) {
            add(angle, "<" + name + "> is " + angle.getValue().toPlainString()
                + " deg; it must be more than 0 and less than 180 deg: the full width that the maker tells, at half power");
        }
    }

    private void skin(Skin skin) {
        Layup layup = skin.getLayup();
        if (layup != null) {
            aboveZero("whole", layup.getWhole(), MOST_SKIN);
            aboveZero("outer-skin", layup.getOuterSkin(), MOST_SKIN);
            aboveZero("core", layup.getCore(), MOST_SKIN);
            aboveZero("inner-skin", layup.getInnerSkin(), MOST_SKIN);
            if (layup.getWhole() != null && skin.getMaterial() == SkinMaterial.CORED_GLASS) {
                add(layup, "<layup> of cored-glass tells no core; write <outer-skin>, <core> and <inner-skin>");
            } else if (layup.getCore() != null && skin.getMaterial() != null && skin.getMaterial() != SkinMaterial.CORED_GLASS
                    && skin.getMaterial() != SkinMaterial.CARBON) {
                add(layup, "<layup> of " + skin.getMaterial().value() + " has a core; write material=\"cored-glass\", or <whole> alone");
            }
        }
        if (skin.getGauge() != null) {
            skin.getGauge().getReading().forEach(each -> {
                faults.addAll(new FeatureRanges(file, reading).place(each.getAt()));
                aboveZero("thickness", each.getThickness(), MOST_SKIN);
            });
        }
        if (skin.getPlanking() != null) {
            for (JAXBElement<PlankLine> line : skin.getPlanking().getSeamOrButtOrFastenings()) {
                line.getValue().getAt().forEach(at -> faults.addAll(new FeatureRanges(file, reading).place(at)));
            }
        }
        if (skin.getMeasured() != null) {
            skin.getMeasured().getDeadrise().forEach(this::deadrise);
        }
    }

    private void deadrise(MeasuredDeadrise measured) {
        faults.addAll(new FeatureRanges(file, reading).place(measured.getAt()));
        for (Angle angle : Stream.of(measured.getStarboard(), measured.getPort()).filter(each -> each != null && each.getValue() != null).toList()) {
            if (angle.getValue().abs().compareTo(RIGHT_DEG) >= 0) {
                add(angle, "measured deadrise is " + angle.getValue().toPlainString() + " deg; it must be more than -90 and less than 90 deg");
            }
        }
        if (measured.getStarboard() == null && measured.getPort() == null) {
            add(measured, "<deadrise> tells no angle; write <starboard> and <port>");
        }
    }

    private void stemThroughSkin(Length stem, Skin skin) {
        if (!Lengths.isWhole(stem) || skin.getLayup() == null) {
            return;
        }
        Layup layup = skin.getLayup();
        double through = Stream.of(layup.getWhole(), layup.getOuterSkin(), layup.getCore(), layup.getInnerSkin())
            .filter(Lengths::isWhole).mapToDouble(Lengths::metres).sum();
        if (Lengths.metres(stem) <= through) {
            add(stem, "<stem-length> is " + asWritten(stem) + ", and the skin " + FixedDecimal.format(through * 1000, 1)
                + " mm; a stem longer than the skin is needed for <flush-through-hull>, or leave that mount away");
        }
    }

    private void rooms(Rooms rooms) {
        Map<String, Locatable> datums = new LinkedHashMap<>();
        for (Object each : rooms.getTransomInsideOrTransferPointOrLookedAt()) {
            if (each instanceof TransomInside transom) {
                aboveZero("transom-thickness", transom.getTransomThickness(), MOST_TRANSOM);
                datum(datums, transom.getName(), transom);
            } else if (each instanceof TransferPoint point) {
                between("ahead-of-after-end", point.getAheadOfAfterEnd(), 0, LONGEST);
                datum(datums, point.getName(), point);
            }
        }
        for (Object each : rooms.getTransomInsideOrTransferPointOrLookedAt()) {
            if (each instanceof LookedAt stretch) {
                from(datums, stretch.getFrom(), stretch);
                ahead(stretch.getAheadFrom(), stretch.getAheadTo());
            } else if (each instanceof Room room) {
                from(datums, room.getFrom(), room);
                ahead(room.getAheadFrom(), room.getAheadTo());
                out(room.getOutFrom(), room.getOutTo());
                between("above-skin", room.getAboveSkin(), 0, WIDEST);
            }
        }
    }

    private void datum(Map<String, Locatable> datums, String name, Locatable element) {
        if (name != null && datums.putIfAbsent(name, element) != null) {
            add(element, "\"" + name + "\" names something to measure from already; name each apart");
        }
    }

    private void from(Map<String, Locatable> datums, String name, Locatable element) {
        if (name != null && !datums.containsKey(name)) {
            add(element, "from=\"" + name + "\" names nothing to measure from; "
                + (datums.isEmpty() ? "write a <transom-inside> or a <transfer-point> and name that" : "expected " + String.join(" or ", datums.keySet())));
        }
    }

    private void support(Support support) {
        ahead(support.getAheadFrom(), support.getAheadTo());
        out(support.getOutFrom(), support.getOutTo());
    }

    private void ahead(Length from, Length to) {
        between("ahead-from", from, -LONGEST, LONGEST);
        between("ahead-to", to, -LONGEST, LONGEST);
        rising("ahead", from, to);
    }

    private void out(Length from, Length to) {
        between("out-from", from, 0, WIDEST);
        between("out-to", to, 0, WIDEST);
        rising("out", from, to);
    }

    private void rising(String which, Length from, Length to) {
        if (Lengths.isWhole(from) && Lengths.isWhole(to) && !(Lengths.metres(from) < Lengths.metres(to))) {
            add(to, "<" + which + "-to> is " + asWritten(to) + " and <" + which + "-from> " + asWritten(from) + "; the first must be more");
        }
    }

    private void aboveZero(String name, Length length, double most) {
        if (Lengths.isWhole(length) && !(length.getValue().signum() > 0 && Lengths.metres(length) <= most)) {
            add(length, "<" + name + "> is " + asWritten(length) + "; it must be more than 0 and at most "
                + FixedDecimal.format(most * 1000, 0) + " mm");
        }
    }

    private void between(String name, Length length, double least, double most) {
        if (Lengths.isWhole(length) && !(Lengths.metres(length) >= least && Lengths.metres(length) <= most)) {
            add(length, "<" + name + "> is " + asWritten(length) + "; it must be from " + FixedDecimal.format(least, 0) + " to "
                + FixedDecimal.format(most, 0) + " m");
        }
    }

    private static String asWritten(Length length) {
        return length.getValue().toPlainString() + " " + length.getUnit().value();
    }

    private void add(Locatable element, String words) {
        faults.add(reading.position(element.sourceLocation()).fault(file, words));
    }
}
