package org.garboard.cli.print;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.garboard.craft.RunningSpeed;
import org.garboard.job.Job;
import org.garboard.mount.Check;
import org.garboard.mount.water.WaterAtSpeed;

/** Where the limits of checks come from: each source once, whatever the speeds and frequencies at which its checks are made. */
final class Sources {
    private static final Pattern FREQUENCY = Pattern.compile(", \\d+ kHz");
    /** What joined a speed to a check's name. */
    private static final Pattern LEFT_OVER = Pattern.compile("( at)?[ ;,]*$");

    private final List<String> speeds;
    private final Map<String, Set<String>> checks = new LinkedHashMap<>();

    Sources(Job job) {
        this.speeds = job.particulars().craft().stream().flatMap(craft -> craft.speeds().stream()).map(Sources::words).toList();
    }

    private static String words(RunningSpeed speed) {
        return WaterAtSpeed.words(speed.name(), speed.knots());
    }

    void add(Check check) {
        checks.computeIfAbsent(check.source(), source -> new LinkedHashSet<>()).add(whatever(check.name()));
    }

    /** The name of a check whatever the speed and the frequency. */
    private String whatever(String name) {
        String rest = name;
        for (String speed : speeds) {
            rest = rest.replace(speed, "");
        }
        return LEFT_OVER.matcher(FREQUENCY.matcher(rest).replaceAll("")).replaceAll("");
    }

    void print(PrintWriter out) {
        if (!checks.isEmpty()) {
            out.println();
            out.println("WHERE THE LIMITS COME FROM");
        }
        checks.forEach((source, names) -> out.println("  " + String.join("; ", names) + ": " + source));
    }
}
