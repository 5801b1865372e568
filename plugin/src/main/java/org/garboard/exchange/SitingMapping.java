package org.garboard.exchange;

import java.util.Locale;
import java.util.Optional;
import org.garboard.exchange.xml.record.Check;
import org.garboard.exchange.xml.record.Region;
import org.garboard.exchange.xml.record.RegionSide;
import org.garboard.exchange.xml.record.Sense;
import org.garboard.exchange.xml.record.Site;
import org.garboard.exchange.xml.record.Siting;
import org.garboard.exchange.xml.record.Verdict;
import org.garboard.exchange.xml.record.Window;
import org.garboard.siting.MountSiting;
import org.garboard.units.FixedDecimal;

/** Turns what was found for one mount into the record's beans. */
final class SitingMapping {
    private static final int UTILISATION_PLACES = 4;
    private static final int CHECK_PLACES = 3;
    private static final int KNOT_PLACES = 3;

    private SitingMapping() {
    }

    static Siting toBean(MountSiting siting) {
        Siting bean = new Siting();
        bean.setMount(siting.mount().word());
        siting.regions().forEach(region -> bean.getRegion().add(region(region)));
        siting.sites().forEach(site -> bean.getSite().add(site(site)));
        siting.nearest().ifPresent(site -> bean.setNearest(site(site)));
        return bean;
    }

    private static Region region(org.garboard.siting.Region region) {
        Region bean = new Region();
        bean.setAreaM2(Decimals.fixed(region.area(), 6));
        bean.setSide(RegionSide.fromValue(region.sides().name().toLowerCase(Locale.ROOT)));
        bean.setOutline(Decimals.planRing(region.outline()));
        region.holes().forEach(hole -> bean.getHole().add(Decimals.planRing(hole)));
        return bean;
    }

    private static Site site(org.garboard.siting.Site site) {
        Site bean = new Site();
        bean.setXM(Decimals.metres(site.x()));
        bean.setYM(Decimals.metres(site.y()));
        bean.setZM(Decimals.metres(site.z()));
        bean.setGirthM(Decimals.metres(site.girth()));
        bean.setDeadriseDeg(Decimals.degrees(site.deadrise()));
        bean.setSlopeDeg(Decimals.degrees(site.slope()));
        site.window().ifPresent(window -> bean.setWindow(window(window)));
        Optional<org.garboard.mount.Check> governing = site.governing();
        for (org.garboard.mount.Check check : site.checks()) {
            Check row = check(check);
            row.setGoverning(governing.isPresent() && governing.get() == check);
            bean.getCheck().add(row);
        }
        return bean;
    }

    private static Window window(org.garboard.siting.Window window) {
        Window bean = new Window();
        bean.setForwardMm(Decimals.millimetres(window.forward()));
        bean.setAftMm(Decimals.millimetres(window.aft()));
        bean.setInboardMm(Decimals.millimetres(window.inboard()));
        bean.setOutboardMm(Decimals.millimetres(window.outboard()));
        return bean;
    }

    private static Check check(org.garboard.mount.Check check) {
        Check bean = new Check();
        bean.setName(check.name());
        bean.setVerdict(verdict(check.verdict()));
        bean.setSense(sense(check.sense()));
        bean.setDemand(Double.isFinite(check.demand()) ? Decimals.fixed(check.demand(), CHECK_PLACES) : null);
        bean.setLimit(Double.isFinite(check.limit()) ? Decimals.fixed(check.limit(), CHECK_PLACES) : null);
        bean.setUnit(check.unit().isEmpty() ? null : check.unit());
        check.knots().ifPresent(knots -> bean.setSpeedKn(Decimals.fixed(knots, KNOT_PLACES)));
        bean.setUtilisation(utilisation(check.utilisation()));
        bean.setSource(check.source());
        bean.setValue(check.sentence());
        return bean;
    }

    private static String utilisation(double utilisation) {
        if (Double.isNaN(utilisation)) {
            return null;
        }
        return Double.isInfinite(utilisation) ? "INF" : FixedDecimal.format(utilisation, UTILISATION_PLACES);
    }

    private static Verdict verdict(org.garboard.mount.Verdict verdict) {
        return switch (verdict) {
            case MET -> Verdict.MET;
            case NOT_MET -> Verdict.NOT_MET;
            case NOT_KNOWN -> Verdict.NOT_KNOWN;
        };
    }

    private static Sense sense(org.garboard.mount.Check.Sense sense) {
        return switch (sense) {
            case AT_MOST -> Sense.AT_MOST;
            case AT_LEAST -> Sense.AT_LEAST;
            case YES_NO -> Sense.YES_OR_NO;
            case KNOWN_ONLY -> Sense.KNOWN_ONLY;
        };
    }
}
