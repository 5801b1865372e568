package org.garboard.cli.fleet;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.garboard.cli.files.InputFault;

/**
 * A job of a fleet.
 *
 * @param file the job file, as the user named it
 * @param name of its folder among the results
 */
public record FleetJob(Path file, String name) {
    private static final String USUAL_NAME = "job.xml";

    /** The jobs that a user names: files, or folders with a job.xml in them. Two that would write to one folder are refused. */
    public static List<FleetJob> of(List<Path> named) throws InputFault {
        Map<String, FleetJob> jobs = new LinkedHashMap<>();
        List<String> faults = new ArrayList<>();
        for (Path path : named) {
            Path file = Files.isDirectory(path) ? path.resolve(USUAL_NAME) : path;
            FleetJob job = new FleetJob(file, name(file));
            FleetJob other = jobs.putIfAbsent(job.name().toLowerCase(Locale.ROOT), job);
            if (other != null) {
                faults.add(file + ": would be written to the same folder, " + job.name() + ", as " + other.file()
                    + "; give one of their folders another name");
            }
        }
        if (!faults.isEmpty()) {
            throw new InputFault(faults);
        }
        return List.copyOf(jobs.values());
    }

    private static String name(Path file) {
        Path whole = file.toAbsolutePath().normalize();
        String own = whole.getFileName().toString();
        if (own.equals(USUAL_NAME) && whole.getParent().getFileName() != null) {
            return whole.getParent().getFileName().toString();
        }
        return own.endsWith(".xml") ? own.substring(0, own.length() - ".xml".length()) : own;
    }
}
