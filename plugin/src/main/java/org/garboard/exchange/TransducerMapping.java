package org.garboard.exchange;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.garboard.craft.Housing;
import org.garboard.craft.SoundBeam;
import org.garboard.craft.TransducerDetails;
import org.garboard.exchange.xml.job.Beam;
import org.garboard.exchange.xml.job.Transducer;
import org.garboard.exchange.xml.job.Weight;
import org.garboard.units.Angle;

/** What a job tells of a transducer beside its outside. */
final class TransducerMapping {
    private static final BigDecimal HZ_PER_KHZ = new BigDecimal(1000);
    private static final BigDecimal KG_PER_G = new BigDecimal("0.001");
    private static final BigDecimal KG_PER_LB = new BigDecimal("0.45359237");

    private TransducerMapping() {
    }

    static TransducerDetails toDetails(Transducer bean) {
        List<SoundBeam> beams = bean.getSound() == null ? List.of()
            : bean.getSound().getBeam().stream().map(TransducerMapping::beam).toList();
        return new TransducerDetails(beams,
            Optional.ofNullable(bean.getHousing()).map(housing -> Housing.valueOf(housing.value().toUpperCase(Locale.ROOT).replace('-', '_'))),
            Optional.ofNullable(bean.getWeight()).map(TransducerMapping::kilograms),
            Optional.ofNullable(bean.getStemLength()).map(Lengths::metres), Optional.ofNullable(bean.getConnectorDiameter()).map(Lengths::metres));
    }

    private static SoundBeam beam(Beam bean) {
        boolean round = bean.getBeamWidth() != null;
        return new SoundBeam(bean.getFrequency().getValue().multiply(HZ_PER_KHZ).doubleValue(),
            angle(round ? bean.getBeamWidth() : bean.getWidthForeAndAft()), angle(round ? bean.getBeamWidth() : bean.getWidthAthwart()));
    }

    static double kilograms(Weight weight) {
        return switch (weight.getUnit()) {
            case "g" -> weight.getValue().multiply(KG_PER_G).doubleValue();
            case "lb" -> weight.getValue().multiply(KG_PER_LB).doubleValue();
            default -> weight.getValue().doubleValue();
        };
    }

    static Angle angle(org.garboard.exchange.xml.job.Angle bean) {
        return Angle.ofDegrees(bean.getValue().doubleValue());
    }
}
