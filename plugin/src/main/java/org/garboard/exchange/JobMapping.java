package org.garboard.exchange;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.garboard.craft.Transducer;
import org.garboard.exchange.xml.job.Drawing;
import org.garboard.exchange.xml.job.Mounts;
import org.garboard.exchange.xml.job.Pocket;
import org.garboard.job.DrawingWish;
import org.garboard.job.Issue;
import org.garboard.job.Job;
import org.garboard.job.Particulars;
import org.garboard.mount.LimitName;
import org.garboard.mount.Limits;
import org.garboard.mount.Preference;
import org.garboard.units.Angle;

/** Turns a bound job that is free of faults into plain records. */
final class JobMapping {
    private JobMapping() {
    }

    /** One for each transducer, in the order of the file. */
    static List<Job> toJobs(org.garboard.exchange.xml.job.Job job) {
        List<TransducerTask> tasks = TransducerTask.of(job);
        return IntStream.range(0, tasks.size()).mapToObj(k -> toJob(job, tasks.get(k), k == 0 ? "" : "-" + (k + 1))).toList();
    }

    /** @param set what tells the drawings of one transducer from those of another */
    private static Job toJob(org.garboard.exchange.xml.job.Job job, TransducerTask task, String set) {
        org.garboard.exchange.xml.job.Transducer body = task.transducer().orElseThrow();
        Mounts mounts = task.mounts().orElseThrow();
        return new Job(
            job.getBoat().getName(),
            Optional.ofNullable(job.getBoat().getHullNumber()).orElse(""),
            job.getTable().getFile(),
            FitWords.fit(job.getTable().getFit()),
            Lengths.metres(job.getDraught()),
            transducer(body),
            preference(mounts).order(MountWords.mounts(mounts)),
            Optional.ofNullable(job.getFeatures()).map(FeatureMapping::toFeatures),
            PocketWishMapping.toWish(task.pocket().orElseGet(Pocket::new)),
            drawing(job.getDrawing(), set),
            new Particulars(TransducerMapping.toDetails(body),
                Optional.ofNullable(job.getSkin()).map(SkinMapping::toSkin),
                Optional.ofNullable(job.getRooms()).map(RoomsMapping::toInside),
                Optional.ofNullable(job.getSupports()).map(RoomsMapping::toSupports),
                Optional.ofNullable(job.getCraft()).map(CraftMapping::toCraft),
                ThroughHullMapping.toWish(task), ThroughHullMapping.toBracket(task), preference(mounts), limits(job.getLimits())));
    }

    private static Transducer transducer(org.garboard.exchange.xml.job.Transducer body) {
        return new Transducer(
            body.getName(),
            Lengths.metres(body.getLength()),
            Lengths.metres(body.getWidth()),
            Lengths.metres(body.getHeight()),
            Lengths.metres(body.getCornerRadius()),
            Lengths.metres(body.getStemDiameter()),
            Angle.ofDegrees(body.getElementInclination().getValue().doubleValue()));
    }

    private static Preference preference(Mounts mounts) {
        return mounts.getPreference() == null ? Preference.LEAST_INVASIVE : Preference.of(mounts.getPreference().value());
    }

    private static Limits limits(org.garboard.exchange.xml.job.Limits asked) {
        Map<LimitName, Double> limits = new EnumMap<>(LimitName.class);
        if (asked != null) {
            asked.getLimit().forEach(limit -> {
                LimitName name = LimitName.of(limit.getOf().value());
                limits.put(name, name.own().measured(limit.getValue().doubleValue()));
            });
        }
        return new Limits(limits);
    }

    private static DrawingWish drawing(Drawing wish, String set) {
        return new DrawingWish(
            DrawingWords.units(wish.getUnits()),
            DrawingWords.paper(wish.getPaper()),
            DrawingWords.orientation(wish.getOrientation()),
            DrawingWords.projection(wish.getProjection()),
            wish.getNumber() + set,
            wish.getOwner(),
            wish.getCreator(),
            Optional.ofNullable(wish.getApprover()).orElse(""),
            wish.getDate().toXMLFormat(),
            wish.getRevision(),
            wish.getRevisions() == null ? List.of() : wish.getRevisions().getIssue().stream()
                .map(issue -> new Issue(issue.getMark(), issue.getDate().toXMLFormat(), issue.getBy(), issue.getValue())).toList());
    }
}
