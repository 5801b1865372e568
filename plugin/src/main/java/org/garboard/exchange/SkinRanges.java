package org.garboard.exchange;

import jakarta.xml.bind.JAXBElement;
import java.math.BigDecimal;
import java.util.stream.Stream;
import org.garboard.exchange.xml.job.Angle;
import org.garboard.exchange.xml.job.Layup;
import org.garboard.exchange.xml.job.Length;
import org.garboard.exchange.xml.job.MeasuredDeadrise;
import org.garboard.exchange.xml.job.PlankLine;
import org.garboard.exchange.xml.job.Skin;
import org.garboard.exchange.xml.job.SkinMaterial;
import org.garboard.units.FixedDecimal;

/** The ranges of what a job tells of the skin; like {@link JobRanges}, the upper ends catch wrong units. */
final class SkinRanges {
    private static final BigDecimal RIGHT_DEG = new BigDecimal(90);
    private static final double THICKEST = 0.3;

    private final JobFaults faults;

    SkinRanges(JobFaults faults) {
        this.faults = faults;
    }

    void check(Skin skin) {
        if (skin.getLayup() != null) {
            layup(skin.getLayup(), skin.getMaterial());
        }
        if (skin.getGauge() != null) {
            skin.getGauge().getReading().forEach(each -> {
                new FeatureRanges(faults).place(each.getAt());
                faults.aboveZero("thickness", each.getThickness(), THICKEST);
            });
        }
        if (skin.getPlanking() != null) {
            for (JAXBElement<PlankLine> line : skin.getPlanking().getSeamOrButtOrFastenings()) {
                line.getValue().getAt().forEach(new FeatureRanges(faults)::place);
            }
        }
        if (skin.getMeasured() != null) {
            skin.getMeasured().getDeadrise().forEach(this::deadrise);
        }
    }

    private void layup(Layup layup, SkinMaterial material) {
        faults.aboveZero("whole", layup.getWhole(), THICKEST);
        faults.aboveZero("outer-skin", layup.getOuterSkin(), THICKEST);
        faults.aboveZero("core", layup.getCore(), THICKEST);
        faults.aboveZero("inner-skin", layup.getInnerSkin(), THICKEST);
        if (layup.getWhole() != null && material == SkinMaterial.CORED_GLASS) {
            faults.add(layup, "<layup> of cored-glass tells no core; write <outer-skin>, <core> and <inner-skin>");
        } else if (layup.getCore() != null && material != null && material != SkinMaterial.CORED_GLASS && material != SkinMaterial.CARBON) {
            faults.add(layup, "<layup> of " + material.value() + " has a core; write material=\"cored-glass\", or <whole> alone");
        }
    }

    private void deadrise(MeasuredDeadrise measured) {
        new FeatureRanges(faults).place(measured.getAt());
        for (Angle angle : Stream.of(measured.getStarboard(), measured.getPort()).filter(each -> each != null && each.getValue() != null).toList()) {
            if (angle.getValue().abs().compareTo(RIGHT_DEG) >= 0) {
                faults.add(angle, "measured deadrise is " + angle.getValue().toPlainString() + " deg; it must be more than -90 and less than 90 deg");
            }
        }
        if (measured.getStarboard() == null && measured.getPort() == null) {
            faults.add(measured, "<deadrise> tells no angle; write <starboard> and <port>");
        }
    }

    /** A stem goes through the whole skin, and its nut has to find thread beyond it. */
    void stem(Length stem, Skin skin) {
        if (!Lengths.isWhole(stem) || skin.getLayup() == null) {
            return;
        }
        Layup layup = skin.getLayup();
        double through = Stream.of(layup.getWhole(), layup.getOuterSkin(), layup.getCore(), layup.getInnerSkin())
            .filter(Lengths::isWhole).mapToDouble(Lengths::metres).sum();
        if (Lengths.metres(stem) <= through) {
            faults.add(stem, "<stem-length> is " + Lengths.asWritten(stem) + ", and the skin " + FixedDecimal.format(through * 1000, 1)
                + " mm; a stem longer than the skin is needed for <flush-through-hull>, or leave that mount away");
        }
    }
}
