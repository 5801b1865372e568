package org.garboard.exchange;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.garboard.exchange.xml.job.Drawing;
import org.garboard.exchange.xml.job.Issue;
import org.garboard.exchange.xml.job.Job;
import org.garboard.exchange.xml.job.Limit;
import org.garboard.exchange.xml.job.Limits;
import org.garboard.exchange.xml.job.Mounts;
import org.garboard.exchange.xml.job.Table;
import org.garboard.exchange.xml.job.Transducer;
import org.garboard.mount.FlushThroughHull;
import org.garboard.mount.LimitName;
import org.garboard.units.FixedDecimal;

/**
 * The ranges in which the values of a job must lie, as {@code garboard-job.xsd} tells them in
 * words: a schema cannot compare lengths in different units.
 *
 * <p>The upper ends are our choice: far beyond any boat's transducer, near enough to catch a
 * wrong unit. What is missing has been told already and is passed over.
 */
final class JobRanges {
    private static final double MOST_DRAUGHT = 10;
    private static final BigDecimal MOST_LIMIT = new BigDecimal(100_000);
    /** What a set of a further transducer adds to the number of its drawings: "-2". */
    private static final int NUMBER_OF_SET = 2;
    /** As in garboard-job.xsd. */
    private static final int MOST_OF_NUMBER = 16;

    private final JobFaults faults;
    private final TablePlace tables;

    JobRanges(String file, XmlReading reading, TablePlace tables) {
        this.faults = new JobFaults(file, reading);
        this.tables = tables;
    }

    List<FileFault> faults(Job job) {
        if (job.getLike() != null) {
            faults.add(job, "the job says like=\"" + job.getLike() + "\": it began with the figures of that demo boat; when each of them is"
                + " your boat's, take like away");
        }
        faults.aboveZero("draught", job.getDraught(), MOST_DRAUGHT);
        Optional.ofNullable(job.getTable()).ifPresent(this::table);
        tasks(job);
        Optional.ofNullable(job.getFeatures()).ifPresent(new FeatureRanges(faults)::check);
        Optional.ofNullable(job.getCraft()).ifPresent(new CraftRanges(faults)::check);
        Optional.ofNullable(job.getSkin()).ifPresent(new SkinRanges(faults)::check);
        Optional.ofNullable(job.getRooms()).ifPresent(new RoomsRanges(faults)::check);
        Optional.ofNullable(job.getSupports()).ifPresent(new RoomsRanges(faults)::check);
        Optional.ofNullable(job.getLimits()).ifPresent(this::limits);
        return faults.all();
    }

    private void table(Table table) {
        String path = table.getFile();
        if (path == null || path.isEmpty()) {
            return;
        }
        boolean bound = tables == TablePlace.BELOW_JOB;
        String remedy = "; name a file in the folder of the job or below it, such as offsets.csv, or give --allow-elsewhere";
        if (path.indexOf('\\') >= 0) {
            faults.add(table, "table file \"" + path + "\" has a backslash; part folders with /");
        } else if (bound && (path.startsWith("/") || path.matches("[A-Za-z]:.*"))) {
            faults.add(table, "table file \"" + path + "\" is an absolute path" + remedy);
        } else if (bound && List.of(path.split("/")).contains("..")) {
            faults.add(table, "table file \"" + path + "\" leaves the folder of the job" + remedy);
        }
    }

    private void tasks(Job job) {
        Set<String> names = new HashSet<>();
        for (TransducerTask task : TransducerTask.of(job)) {
            new TransducerRanges(faults).check(task);
            task.transducer().filter(body -> body.getName() != null && !names.add(body.getName())).ifPresent(body ->
                faults.add(body, "a transducer named \"" + body.getName() + "\" stands in the job already; name each apart"));
            if (task.transducer().isPresent() && job.getSkin() != null && task.mounts().filter(JobRanges::isFlush).isPresent()) {
                new SkinRanges(faults).stem(task.transducer().map(Transducer::getStemLength).orElse(null), job.getSkin());
            }
        }
        String number = job.getDrawing() == null || job.getDrawing().getNumber() == null ? "" : job.getDrawing().getNumber();
        issues(job);
        if (job.getFurtherTransducers() != null && number.length() > MOST_OF_NUMBER - NUMBER_OF_SET) {
            faults.add(job.getDrawing(), "<number> is \"" + number + "\"; sets of further transducers add -2 and so on to it, so with <further-transducers>"
                + " it may have " + (MOST_OF_NUMBER - NUMBER_OF_SET) + " characters");
        }
    }

    /** The table of revisions ends with the drawing's own. */
    private void issues(Job job) {
        if (job.getDrawing() == null || job.getDrawing().getRevisions() == null || job.getDrawing().getRevisions().getIssue().isEmpty()) {
            return;
        }
        Drawing drawing = job.getDrawing();
        List<Issue> issues = drawing.getRevisions().getIssue();
        Set<String> marks = new HashSet<>();
        for (int i = 0; i < issues.size(); i++) {
            Issue issue = issues.get(i);
            if (issue.getMark() != null && !marks.add(issue.getMark())) {
                faults.add(issue, "revision \"" + issue.getMark() + "\" stands in <revisions> already; give each issue a mark of its own");
            }
            if (i > 0 && issue.getDate() != null && issues.get(i - 1).getDate() != null
                    && issue.getDate().toXMLFormat().compareTo(issues.get(i - 1).getDate().toXMLFormat()) < 0) {
                faults.add(issue, "issue of " + issue.getDate() + " stands after that of " + issues.get(i - 1).getDate() + "; list the first issue first");
            }
        }
        Issue last = issues.get(issues.size() - 1);
        if (last.getMark() != null && last.getDate() != null && drawing.getRevision() != null && drawing.getDate() != null
                && !(last.getMark().equals(drawing.getRevision()) && last.getDate().equals(drawing.getDate()))) {
            faults.add(last, "the last of <revisions> is \"" + last.getMark() + "\" of " + last.getDate() + "; expected the drawing's own, \"" + drawing.getRevision()
                + "\" of " + drawing.getDate() + ": add an issue for it, or mend <revision> and <date>");
        }
    }

    private static boolean isFlush(Mounts mounts) {
        return mounts.getTransomMountOrInHullOrFlushThroughHull().stream()
            .anyMatch(mount -> mount.getName().getLocalPart().equals(new FlushThroughHull().word()));
    }

    private void limits(Limits limits) {
        Set<LimitName> seen = new HashSet<>();
        for (Limit limit : limits.getLimit()) {
            if (limit.getOf() == null || limit.getUnit() == null || limit.getValue() == null) {
                continue;
            }
            LimitName name = LimitName.of(limit.getOf().value());
            String unit = name.own().measure().unit();
            if (!seen.add(name)) {
                faults.add(limit, "the limit of " + name.word() + " stands in <limits> already; each may stand there once");
            }
            if (!limit.getUnit().equals(unit)) {
                faults.add(limit, "the limit of " + name.word() + " is in " + limit.getUnit() + "; it is measured in " + unit);
            } else if (limit.getValue().signum() <= 0 || limit.getValue().compareTo(MOST_LIMIT) > 0) {
                faults.add(limit, "the limit of " + name.word() + " is " + limit.getValue().toPlainString() + " " + unit
                    + "; it must be more than 0 and at most 100000; the program's own is "
                    + FixedDecimal.format(name.own().measure().shown(name.own().value()), 1) + " " + unit);
            }
        }
    }
}
