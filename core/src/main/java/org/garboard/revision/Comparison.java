package org.garboard.revision;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.garboard.craft.LaidFeature;
import org.garboard.geometry.Quad;
import org.garboard.job.RecordedFigure;
import org.garboard.job.RecordedSet;
import org.garboard.job.RecordedSiting;
import org.garboard.mount.Check;
import org.garboard.mount.Mount;
import org.garboard.siting.MountSiting;
import org.garboard.siting.Site;
import org.garboard.units.FixedDecimal;

/** Finds what differs between two records. What a record prints alike is alike. */
public final class Comparison {
    private static final double PRINTED = 5e-7;
    private static final String NONE = "none";

    private final RecordedSet earlier;
    private final RecordedSet later;
    private final List<Change> changes = new ArrayList<>();

    private Comparison(RecordedSet earlier, RecordedSet later) {
        this.earlier = earlier;
        this.later = later;
    }

    /** Everything that differs, in a fixed order; nothing where the two decide the same from the same. */
    public static List<Change> of(RecordedSet earlier, RecordedSet later) {
        Comparison comparison = new Comparison(earlier, later);
        comparison.words(Change.Kind.INPUT, "program", "version", earlier.programVersion(), later.programVersion());
        comparison.figures(true);
        comparison.figures(false);
        comparison.features();
        for (int i = 0; i < Math.max(earlier.sitings().size(), later.sitings().size()); i++) {
            comparison.transducer(i);
        }
        return comparison.changes;
    }

    private void figures(boolean inputs) {
        Map<String, RecordedFigure> before = bySubject(earlier, inputs);
        Map<String, RecordedFigure> after = bySubject(later, inputs);
        Set<String> keys = new LinkedHashSet<>(before.keySet());
        keys.addAll(after.keySet());
        for (String key : keys) {
            RecordedFigure figure = after.getOrDefault(key, before.get(key));
            int unit = figure.name().indexOf('_');
            String name = (unit < 0 ? figure.name() : figure.name().substring(0, unit)).replace('-', ' ');
            change(inputs ? Change.Kind.INPUT : Change.Kind.FIGURE, figure.subject(), name.equals("text") ? "" : name, value(before.get(key)),
                value(after.get(key)), unit < 0 ? "" : figure.name().substring(unit + 1).replace('_', ' '));
        }
    }

    private static Map<String, RecordedFigure> bySubject(RecordedSet set, boolean inputs) {
        Map<String, RecordedFigure> figures = new LinkedHashMap<>();
        set.figures().stream().filter(figure -> figure.subject().startsWith("inputs") == inputs)
            .forEach(figure -> figures.put(figure.subject() + "|" + figure.name(), figure));
        return figures;
    }

    private static String value(RecordedFigure figure) {
        return figure == null ? "" : figure.value();
    }

    private void features() {
        Map<String, LaidFeature> before = named(earlier);
        Map<String, LaidFeature> after = named(later);
        Set<String> names = new LinkedHashSet<>(before.keySet());
        names.addAll(after.keySet());
        for (String name : names) {
            LaidFeature then = before.get(name);
            LaidFeature now = after.get(name);
            if (then == null || now == null) {
                words(Change.Kind.FEATURE, name, "", then == null ? "" : words(then), now == null ? "" : words(now));
            } else {
                words(Change.Kind.FEATURE, name, "", words(then), words(now));
                if (!covers(then, now)) {
                    changes.add(new Change(Change.Kind.FEATURE, name, "what it covers", from(then), from(now), "m aft of origin", ""));
                }
            }
        }
    }

    private static Map<String, LaidFeature> named(RecordedSet set) {
        Map<String, LaidFeature> named = new LinkedHashMap<>();
        for (LaidFeature feature : set.features().laid()) {
            String name = feature.name();
            int again = 2;
            while (named.containsKey(name)) {
                name = feature.name() + " " + again++;
            }
            named.put(name, feature);
        }
        return named;
    }

    private static String words(LaidFeature feature) {
        return feature.kind() + ", " + feature.sides().words();
    }

    private static String from(LaidFeature feature) {
        return FixedDecimal.format(feature.from(), 3);
    }

    /** Whether two cover the same of the bottom. */
    public static boolean covers(LaidFeature one, LaidFeature other) {
        if (one.cover().size() != other.cover().size()) {
            return false;
        }
        for (int i = 0; i < one.cover().size(); i++) {
            for (int corner = 0; corner < Quad.CORNERS; corner++) {
                if (differ(one.cover().get(i).x(corner), other.cover().get(i).x(corner))
                        || differ(one.cover().get(i).y(corner), other.cover().get(i).y(corner))) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean differ(double one, double other) {
        return Math.abs(one - other) > PRINTED;
    }

    private void transducer(int i) {
        Optional<RecordedSiting> before = at(earlier, i);
        Optional<RecordedSiting> after = at(later, i);
        String name = after.or(() -> before).orElseThrow().transducer();
        if (Stream.concat(before.stream(), after.stream()).anyMatch(RecordedSiting::isGiven)) {
            words(Change.Kind.MOUNT, name, "drawn", before.map(Comparison::drawn).orElse(""), after.map(Comparison::drawn).orElse(""));
        } else {
            words(Change.Kind.MOUNT, name, "advised", before.map(Comparison::mount).orElse(""), after.map(Comparison::mount).orElse(""));
        }
        if (before.isEmpty() || after.isEmpty()) {
            return;
        }
        Set<Mount> mounts = new LinkedHashSet<>();
        List.of(before.get(), after.get()).forEach(siting -> siting.mounts().forEach(each -> mounts.add(each.mount())));
        for (Mount mount : mounts) {
            mount(name, Shift.of(before.get(), after.get(), mount), before.get(), after.get());
        }
    }

    private static Optional<RecordedSiting> at(RecordedSet set, int i) {
        return i < set.sitings().size() ? Optional.of(set.sitings().get(i)) : Optional.empty();
    }

    private static String mount(RecordedSiting siting) {
        return siting.advised().map(Mount::words).orElse(NONE);
    }

    private static String drawn(RecordedSiting siting) {
        return siting.isGiven() ? mount(siting) + ", place given by the yard" : mount(siting) + ", advised";
    }

    private void mount(String transducer, Shift shift, RecordedSiting before, RecordedSiting after) {
        String subject = transducer + ", " + shift.mount().words();
        words(Change.Kind.MOUNT, subject, "asked for", asked(before, shift.mount()), asked(after, shift.mount()));
        number(Change.Kind.MOUNT, subject, "regions that serve", area(before, shift.mount()), area(after, shift.mount()), "m2", 3);
        if (shift.before().isEmpty() || shift.after().isEmpty()) {
            words(Change.Kind.PLACE, subject, "best place", shift.before().map(Comparison::place).orElse(NONE), shift.after().map(Comparison::place).orElse(NONE));
            return;
        }
        Site then = shift.before().get();
        Site now = shift.after().get();
        move(subject, "along the boat", then.x(), now.x(), "aft", "forward");
        move(subject, "from the centreline to starboard", then.y(), now.y(), "to starboard", "to port");
        move(subject, "girth", then.girth(), now.girth(), "more", "less");
        number(Change.Kind.PLACE, subject, "deadrise", Math.toDegrees(then.deadrise()), Math.toDegrees(now.deadrise()), "deg", 1);
        number(Change.Kind.PLACE, subject, "slope fore and aft", Math.toDegrees(then.slope()), Math.toDegrees(now.slope()), "deg", 1);
        words(Change.Kind.CHECK, subject, "governing", governing(then), governing(now));
        checks(subject, then, now);
    }

    private static String asked(RecordedSiting siting, Mount mount) {
        return siting.mounts().stream().anyMatch(each -> each.mount().equals(mount)) ? "yes" : "no";
    }

    private static double area(RecordedSiting siting, Mount mount) {
        return siting.mounts().stream().filter(each -> each.mount().equals(mount)).map(MountSiting::regions).flatMap(List::stream)
            .mapToDouble(region -> region.area()).sum();
    }

    private static String place(Site site) {
        return "x " + FixedDecimal.format(site.x(), 3) + " m, y " + FixedDecimal.format(site.y(), 3) + " m";
    }

    private static String governing(Site site) {
        return site.governing().map(Check::name).orElse(NONE);
    }

    private void checks(String subject, Site then, Site now) {
        Map<String, Check> before = named(then);
        Map<String, Check> after = named(now);
        Set<String> names = new LinkedHashSet<>(before.keySet());
        names.addAll(after.keySet());
        for (String name : names) {
            Check was = before.get(name);
            Check is = after.get(name);
            String check = subject + ", " + name;
            words(Change.Kind.CHECK, check, "verdict", was == null ? "" : was.verdict().words(), is == null ? "" : is.verdict().words());
            if (was != null && is != null) {
                number(Change.Kind.CHECK, check, "demand", was.demand(), is.demand(), is.unit(), 3);
                number(Change.Kind.CHECK, check, "limit", was.limit(), is.limit(), is.unit(), 3);
            }
        }
    }

    private static Map<String, Check> named(Site site) {
        Map<String, Check> named = new LinkedHashMap<>();
        for (Check check : site.checks()) {
            String name = check.name();
            int again = 2;
            while (named.containsKey(name)) {
                name = check.name() + " " + again++;
            }
            named.put(name, check);
        }
        return named;
    }

    private void move(String subject, String what, double before, double after, String more, String less) {
        if (differ(before, after)) {
            changes.add(new Change(Change.Kind.PLACE, subject, what, FixedDecimal.format(before, 3), FixedDecimal.format(after, 3), "m",
                FixedDecimal.format(Math.abs(after - before) * 1000, 0) + " mm " + (after > before ? more : less)));
        }
    }

    private void number(Change.Kind kind, String subject, String what, double before, double after, String unit, int places) {
        String then = Double.isNaN(before) ? "" : FixedDecimal.format(before, places);
        String now = Double.isNaN(after) ? "" : FixedDecimal.format(after, places);
        change(kind, subject, what, then, now, unit);
    }

    private void words(Change.Kind kind, String subject, String what, String before, String after) {
        change(kind, subject, what, before, after, "");
    }

    private void change(Change.Kind kind, String subject, String what, String before, String after, String unit) {
        if (!before.equals(after)) {
            changes.add(new Change(kind, subject, what, before, after, unit, ""));
        }
    }
}
