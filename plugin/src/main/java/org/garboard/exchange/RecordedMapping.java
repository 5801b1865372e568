package org.garboard.exchange;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.LaidFeature;
import org.garboard.craft.Sides;
import org.garboard.exchange.xml.job.DrawingUnits;
import org.garboard.exchange.xml.job.Orientation;
import org.garboard.exchange.xml.job.Paper;
import org.garboard.exchange.xml.job.Projection;
import org.garboard.exchange.xml.record.Answer;
import org.garboard.exchange.xml.record.Drawing;
import org.garboard.exchange.xml.record.PlanRing;
import org.garboard.exchange.xml.record.Record;
import org.garboard.exchange.xml.record.Siting;
import org.garboard.exchange.xml.record.Transducer;
import org.garboard.geometry.Quad;
import org.garboard.job.Chooser;
import org.garboard.job.DrawingWish;
import org.garboard.job.Issue;
import org.garboard.job.RecordedFigure;
import org.garboard.job.RecordedSet;
import org.garboard.job.RecordedSiting;
import org.garboard.mount.Check;
import org.garboard.mount.Mount;
import org.garboard.mount.Verdict;
import org.garboard.siting.MountSiting;
import org.garboard.siting.PlanPoint;
import org.garboard.siting.Region;
import org.garboard.siting.Site;
import org.garboard.siting.Window;

/** Turns a record's bean back into what was decided. */
final class RecordedMapping {
    private static final double MILLIMETRES = 1000;

    private RecordedMapping() {
    }

    static RecordedSet toSet(Record bean, List<RecordedFigure> figures) {
        return new RecordedSet(bean.getProgramVersion(), bean.getBoat().getName(),
            Optional.ofNullable(bean.getBoat().getHullNumber()).orElse(""),
            bean.getInputs().getTable().getName(), bean.getInputs().getTable().getSha256(),
            bean.getBoat().getDraughtM().doubleValue(), features(bean), drawing(bean.getDrawing()),
            sitings(bean), figures);
    }

    private static List<RecordedSiting> sitings(Record bean) {
        List<RecordedSiting> sitings = new ArrayList<>();
        sitings.add(siting(bean.getTransducer(), bean.getSiting(), bean.getAnswer()));
        bean.getFurther().forEach(further -> sitings.add(siting(further.getTransducer(), further.getSiting(), further.getAnswer())));
        return sitings;
    }

    private static RecordedSiting siting(Transducer transducer, List<Siting> found, Answer answer) {
        return new RecordedSiting(transducer.getName(), found.stream().map(RecordedMapping::mount).toList(),
            Optional.ofNullable(answer.getMount()).map(MountWords::mount), answer.getValue(),
            answer.getChosenBy() == null ? Chooser.SEARCH : Chooser.YARD);
    }

    private static BottomFeatures features(Record bean) {
        if (bean.getFeatures() == null) {
            return BottomFeatures.NOT_LISTED;
        }
        return new BottomFeatures(bean.getFeatures().getFeature().stream().map(RecordedMapping::feature).toList(),
            bean.getFeatures().isListed() ? BottomFeatures.FeatureList.GIVEN : BottomFeatures.FeatureList.MISSING);
    }

    private static LaidFeature feature(org.garboard.exchange.xml.record.Feature bean) {
        return new LaidFeature(bean.getName(), bean.getKind(), Sides.valueOf(bean.getSide().toUpperCase(Locale.ROOT)),
            bean.getCover().stream().map(RecordedMapping::quad).toList(), Optional.empty());
    }

    private static Quad quad(PlanRing ring) {
        double[] xy = new double[2 * Quad.CORNERS];
        List<PlanPoint> points = points(ring);
        for (int i = 0; i < Quad.CORNERS; i++) {
            xy[2 * i] = points.get(i).x();
            xy[2 * i + 1] = points.get(i).y();
        }
        return Quad.of(xy);
    }

    private static List<PlanPoint> points(PlanRing ring) {
        List<PlanPoint> points = new ArrayList<>();
        for (String point : ring.getValue()) {
            int comma = point.indexOf(',');
            points.add(new PlanPoint(Double.parseDouble(point.substring(0, comma)), Double.parseDouble(point.substring(comma + 1))));
        }
        return points;
    }

    private static DrawingWish drawing(Drawing bean) {
        return new DrawingWish(DrawingWords.units(DrawingUnits.fromValue(bean.getUnits())), DrawingWords.paper(Paper.fromValue(bean.getPaper())),
            DrawingWords.orientation(bean.getOrientation() == null ? null : Orientation.fromValue(bean.getOrientation())),
            DrawingWords.projection(Projection.fromValue(bean.getProjection())), bean.getNumber(), bean.getOwner(), bean.getCreator(),
            Optional.ofNullable(bean.getApprover()).orElse(""), bean.getDate().toXMLFormat(), bean.getRevision(),
            bean.getIssue().stream().map(issue -> new Issue(issue.getMark(), issue.getDate().toXMLFormat(), issue.getBy(), issue.getValue())).toList());
    }

    private static MountSiting mount(Siting bean) {
        Mount mount = MountWords.mount(bean.getMount());
        return new MountSiting(mount, bean.getRegion().stream().map(RecordedMapping::region).toList(),
            bean.getSite().stream().map(site -> site(mount, site)).toList(), Optional.ofNullable(bean.getNearest()).map(site -> site(mount, site)));
    }

    private static Region region(org.garboard.exchange.xml.record.Region bean) {
        return new Region(points(bean.getOutline()), bean.getHole().stream().map(RecordedMapping::points).toList(),
            bean.getAreaM2().doubleValue(), bean.getSide() == null ? Sides.BOTH : Sides.valueOf(bean.getSide().name()));
    }

    private static Site site(Mount mount, org.garboard.exchange.xml.record.Site bean) {
        return new Site(mount, bean.getXM().doubleValue(), bean.getYM().doubleValue(), bean.getZM().doubleValue(), bean.getGirthM().doubleValue(),
            Math.toRadians(bean.getDeadriseDeg().doubleValue()), Math.toRadians(bean.getSlopeDeg().doubleValue()),
            bean.getCheck().stream().map(RecordedMapping::check).toList(), Optional.ofNullable(bean.getWindow()).map(RecordedMapping::window));
    }

    private static Window window(org.garboard.exchange.xml.record.Window bean) {
        return new Window(bean.getForwardMm().doubleValue() / MILLIMETRES, bean.getAftMm().doubleValue() / MILLIMETRES,
            bean.getInboardMm().doubleValue() / MILLIMETRES, bean.getOutboardMm().doubleValue() / MILLIMETRES);
    }

    private static Check check(org.garboard.exchange.xml.record.Check bean) {
        return new Check(bean.getName(), sense(bean), number(bean.getDemand()), number(bean.getLimit()),
            Optional.ofNullable(bean.getUnit()).orElse(""), utilisation(bean.getUtilisation()), Verdict.valueOf(bean.getVerdict().name()),
            bean.getSource(), bean.getValue(), bean.getSpeedKn() == null ? OptionalDouble.empty() : OptionalDouble.of(bean.getSpeedKn().doubleValue()));
    }

    private static Check.Sense sense(org.garboard.exchange.xml.record.Check bean) {
        return switch (bean.getSense()) {
            case AT_MOST -> Check.Sense.AT_MOST;
            case AT_LEAST -> Check.Sense.AT_LEAST;
            case YES_OR_NO -> Check.Sense.YES_NO;
            case KNOWN_ONLY -> Check.Sense.KNOWN_ONLY;
        };
    }

    private static double number(BigDecimal value) {
        return value == null ? Double.NaN : value.doubleValue();
    }

    private static double utilisation(String text) {
        if (text == null) {
            return Double.NaN;
        }
        return text.equals("INF") ? Double.POSITIVE_INFINITY : Double.parseDouble(text);
    }
}
