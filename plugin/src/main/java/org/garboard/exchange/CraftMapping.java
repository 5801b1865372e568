package org.garboard.exchange;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.garboard.craft.Drive;
import org.garboard.craft.FeaturePlace.Datum;
import org.garboard.craft.HomeWater;
import org.garboard.craft.RunningSpeed;
import org.garboard.craft.SeaTrial;
import org.garboard.craft.ThrustLine;
import org.garboard.craft.TrimBand;
import org.garboard.craft.Weights;
import org.garboard.exchange.xml.job.CentreOfGravity;
import org.garboard.exchange.xml.job.Craft;
import org.garboard.exchange.xml.job.Speed;
import org.garboard.exchange.xml.job.Water;
import org.garboard.hull.Hull;

/** The craft of a job, and of its record. */
final class CraftMapping {
    private static final BigDecimal PER_CENT = new BigDecimal(100);
    private static final int KNOT_PLACES = 3;
    private static final int KILOGRAM_PLACES = 3;

    private CraftMapping() {
    }

    static org.garboard.craft.Craft toCraft(Craft bean) {
        return new org.garboard.craft.Craft(drive(bean.getDrive()),
            Optional.ofNullable(bean.getWeights()).map(CraftMapping::weights),
            bean.getSpeeds().getSpeed().stream().map(CraftMapping::speed).sorted(Comparator.comparingDouble(RunningSpeed::knots)).toList(),
            Optional.ofNullable(bean.getWater()).map(CraftMapping::water).orElse(HomeWater.SEA),
            Optional.ofNullable(bean.getTrimBand())
                .map(band -> new TrimBand(TransducerMapping.angle(band.getBowDown()), TransducerMapping.angle(band.getBowUp())))
                .orElse(TrimBand.USUAL),
            bean.getSeaTrials() == null ? List.of() : bean.getSeaTrials().getSeaTrial().stream().map(CraftMapping::trial)
                .sorted(Comparator.comparingDouble(SeaTrial::knots)).toList());
    }

    private static Drive drive(org.garboard.exchange.xml.job.Drive bean) {
        return new Drive(Drive.Kind.valueOf(constant(bean.getKind().value())), bean.getNumber(),
            Optional.ofNullable(bean.getHand()).map(hand -> Drive.Hand.valueOf(constant(hand.value()))),
            Optional.ofNullable(bean.getPropellerDiameter()).map(Lengths::metres),
            Optional.ofNullable(bean.getThrustLine())
                .map(line -> new ThrustLine(Lengths.metres(line.getAboveTransomFoot()), TransducerMapping.angle(line.getInclination()))),
            Optional.ofNullable(bean.getApart()).map(Lengths::metres));
    }

    private static Weights weights(org.garboard.exchange.xml.job.Weights bean) {
        CentreOfGravity centre = bean.getCentreOfGravity();
        return new Weights(TransducerMapping.kilograms(bean.getLight()), TransducerMapping.kilograms(bean.getFull()),
            centre.getX() != null ? Datum.AFT_OF_ORIGIN : Datum.AHEAD_OF_AFTER_END,
            Lengths.metres(centre.getX() != null ? centre.getX() : centre.getAheadOfAfterEnd()), Lengths.metres(centre.getAboveBase()));
    }

    private static RunningSpeed speed(Speed bean) {
        return new RunningSpeed(bean.getName(), bean.getValue().doubleValue(),
            Optional.ofNullable(bean.getShare()).map(share -> share.divide(PER_CENT).doubleValue()));
    }

    private static HomeWater water(Water bean) {
        return new HomeWater(bean.getTemperature().getValue().doubleValue(),
            bean.getSalinity() == null ? HomeWater.SEA_SALINITY : bean.getSalinity().getValue().doubleValue());
    }

    private static SeaTrial trial(org.garboard.exchange.xml.job.SeaTrial bean) {
        return new SeaTrial(bean.getAt().getValue().doubleValue(), Optional.ofNullable(bean.getTrim()).map(TransducerMapping::angle),
            Optional.ofNullable(bean.getWettedKeel()).map(Lengths::metres));
    }

    private static String constant(String word) {
        return word.toUpperCase(Locale.ROOT).replace('-', '_');
    }

    static org.garboard.exchange.xml.record.Craft toBean(org.garboard.craft.Craft craft, Hull hull) {
        org.garboard.exchange.xml.record.Craft bean = new org.garboard.exchange.xml.record.Craft();
        bean.setDrive(drive(craft.drive()));
        craft.weights().ifPresent(weights -> bean.setWeights(weights(weights, hull)));
        craft.speeds().forEach(speed -> bean.getSpeed().add(speed(speed)));
        org.garboard.exchange.xml.record.Water water = new org.garboard.exchange.xml.record.Water();
        water.setTemperatureC(Decimals.fixed(craft.water().celsius(), 2));
        water.setSalinityGPerKg(Decimals.fixed(craft.water().salinity(), 4));
        bean.setWater(water);
        org.garboard.exchange.xml.record.TrimBand band = new org.garboard.exchange.xml.record.TrimBand();
        band.setBowDownDeg(Decimals.degrees(craft.band().lower().radians()));
        band.setBowUpDeg(Decimals.degrees(craft.band().higher().radians()));
        bean.setTrimBand(band);
        craft.trials().forEach(trial -> bean.getSeaTrial().add(trial(trial)));
        return bean;
    }

    private static org.garboard.exchange.xml.record.Drive drive(Drive drive) {
        org.garboard.exchange.xml.record.Drive bean = new org.garboard.exchange.xml.record.Drive();
        bean.setKind(word(drive.kind()));
        bean.setNumber(drive.number());
        drive.hand().ifPresent(hand -> bean.setHand(word(hand)));
        drive.propellerDiameter().ifPresent(diameter -> bean.setPropellerDiameterMm(Decimals.millimetres(diameter)));
        drive.apart().ifPresent(apart -> bean.setApartMm(Decimals.millimetres(apart)));
        bean.setThrustHeightM(Decimals.metres(drive.thrust().height()));
        bean.setThrustInclinationDeg(Decimals.degrees(drive.thrust().inclination().radians()));
        bean.setThrust(drive.toldThrust().isPresent() ? "told" : "usual");
        return bean;
    }

    private static org.garboard.exchange.xml.record.Weights weights(Weights weights, Hull hull) {
        org.garboard.exchange.xml.record.Weights bean = new org.garboard.exchange.xml.record.Weights();
        bean.setLightKg(Decimals.fixed(weights.light(), KILOGRAM_PLACES));
        bean.setFullKg(Decimals.fixed(weights.full(), KILOGRAM_PLACES));
        bean.setXM(Decimals.metres(weights.x(hull)));
        bean.setZM(Decimals.metres(weights.vcg()));
        return bean;
    }

    private static org.garboard.exchange.xml.record.Speed speed(RunningSpeed speed) {
        org.garboard.exchange.xml.record.Speed bean = new org.garboard.exchange.xml.record.Speed();
        bean.setName(speed.name());
        bean.setSpeedKn(Decimals.fixed(speed.knots(), KNOT_PLACES));
        speed.share().ifPresent(share -> bean.setSharePercent(Decimals.fixed(share * 100, 2)));
        return bean;
    }

    private static org.garboard.exchange.xml.record.SeaTrial trial(SeaTrial trial) {
        org.garboard.exchange.xml.record.SeaTrial bean = new org.garboard.exchange.xml.record.SeaTrial();
        bean.setSpeedKn(Decimals.fixed(trial.knots(), KNOT_PLACES));
        trial.trim().ifPresent(trim -> bean.setTrimDeg(Decimals.degrees(trim.radians())));
        trial.wettedKeel().ifPresent(length -> bean.setWettedKeelM(Decimals.metres(length)));
        return bean;
    }

    private static String word(Enum<?> choice) {
        return choice.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
