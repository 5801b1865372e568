package org.garboard.cli.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.garboard.appendage.Keel;
import org.garboard.cli.print.SkinReach;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.Feature;
import org.garboard.craft.FeaturePlace;
import org.garboard.exchange.CraftOnHull;
import org.garboard.exchange.FileFault;
import org.garboard.exchange.FileHash;
import org.garboard.exchange.JobFile;
import org.garboard.exchange.JobReading;
import org.garboard.exchange.RecordSource;
import org.garboard.exchange.TablePlace;
import org.garboard.hull.Hull;
import org.garboard.job.Job;
import org.garboard.mount.water.RunningWater;
import org.garboard.units.FixedDecimal;

/**
 * A job file that was read, with the table that it names.
 *
 * @param jobs a job for each transducer of the file, in its order
 * @param file the job file, named without folders
 * @param table its table of offsets, named as in the job
 * @param text the job file as it stands
 */
public record JobSource(List<Job> jobs, FileHash file, TableSource table, Text text) {
    private static final int MOST_BYTES = 2 << 20;

    public JobSource {
        jobs = List.copyOf(jobs);
    }

    /** A file's bytes and the name that messages call it by. */
    public static final class Text {
        private final String name;
        private final byte[] bytes;

        private Text(String name, byte[] bytes) {
            this.name = name;
            this.bytes = bytes;
        }

        private List<String> faultsOn(Hull hull) {
            return CraftOnHull.faults(name, bytes, hull).stream().map(FileFault::message).toList();
        }
    }

    /** A job file as it stands, sound or not. */
    public static byte[] bytes(Path path) throws InputFault {
        return InputFile.read(path, MOST_BYTES);
    }

    public static JobSource read(Path path, TablePlace tables) throws InputFault {
        byte[] bytes = bytes(path);
        JobReading reading = JobFile.read(path.toString(), bytes, tables);
        if (reading instanceof JobReading.Faulty faulty) {
            throw new InputFault(faulty.faults().stream().map(FileFault::message).toList());
        }
        List<Job> jobs = ((JobReading.Read) reading).jobs();
        Job job = jobs.get(0);
        FileHash file = FileHash.of(path.getFileName().toString(), bytes);
        return new JobSource(jobs, file, TableSource.read(tablePath(path, job, tables), job.tableFile()), new Text(path.toString(), bytes));
    }

    /** The first: what is told of the boat is the same in all. */
    public Job job() {
        return jobs.get(0);
    }

    /** What job and table tell of the bottom, laid on the hull drawn from the table. */
    public BottomFeatures features(Hull hull) throws InputFault {
        List<String> off = new ArrayList<>();
        Job job = job();
        for (Feature feature : job.features().orElse(List.of())) {
            feature.placeOffSkin(hull).ifPresent(place -> off.add(offSkin(hull, feature, place)));
        }
        job.particulars().off(hull).forEach(each -> off.add(file.name() + ": " + each + ", " + SkinReach.along(hull)
            + "; correct where it is"));
        if (job.particulars().craft().isPresent()) {
            off.addAll(text.faultsOn(hull));
        }
        if (!off.isEmpty()) {
            throw new InputFault(off);
        }
        return BottomFeatures.on(hull, job.features()).with(table.table(), hull);
    }

    private String offSkin(Hull hull, Feature feature, int number) {
        FeaturePlace place = feature.places().get(number);
        return file.name() + ": " + feature.kind() + " \"" + feature.name() + "\": its place" + (feature.places().size() > 1 ? " " + (number + 1) : "")
            + ", x = " + FixedDecimal.format(place.x(hull), 3) + " m and " + (place.measure() == FeaturePlace.Measure.GIRTH ? "girth " : "y = ")
            + FixedDecimal.format(place.out(), 3) + " m, is off the skin, " + SkinReach.at(hull, place.x(hull)) + "; correct its x, y or girth";
    }

    /** What a record is made from. */
    public RecordSource recordSource(String programVersion, Hull hull) {
        return new RecordSource(programVersion, file, table.file(), hull, Keel.of(table.table(), hull));
    }

    /** How the boat runs; the same for all her transducers. */
    public RunningWater running(Hull hull) {
        return job().particulars().running(hull, Keel.of(table.table(), hull));
    }

    /** The table's file; a link that leads out of the job's folder is not followed unless that is allowed. */
    private static Path tablePath(Path jobFile, Job job, TablePlace tables) throws InputFault {
        try {
            Path table = jobFile.resolveSibling(job.tableFile());
            if (!Files.exists(table)) {
                throw new InputFault(jobFile + ": the table file " + job.tableFile()
                    + " is not there; name a file in the folder of the job or below it");
            }
            Path folder = jobFile.toAbsolutePath().getParent().toRealPath();
            if (tables == TablePlace.BELOW_JOB && !table.toRealPath().startsWith(folder)) {
                throw new InputFault(jobFile + ": the table file " + job.tableFile()
                    + " is a link that leads out of the folder of the job; put the table itself there, or give --allow-elsewhere");
            }
            return table;
        } catch (IOException | InvalidPathException e) {
            throw new InputFault(jobFile + ": the table file " + job.tableFile() + " cannot be read: " + e.getMessage());
        }
    }
}
