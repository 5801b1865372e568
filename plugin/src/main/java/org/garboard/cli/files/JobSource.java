package org.garboard.cli.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.garboard.exchange.FileFault;
import org.garboard.exchange.FileHash;
import org.garboard.exchange.JobFile;
import org.garboard.exchange.JobReading;
import org.garboard.job.Job;

/**
 * A job that was read, with the table that it names.
 *
 * @param job the job
 * @param file the job file, named without folders
 * @param table its table of offsets, named as in the job
 */
public record JobSource(Job job, FileHash file, TableSource table) {
    private static final int MOST_BYTES = 2 << 20;

    public static JobSource read(Path path) throws InputFault {
        byte[] bytes = InputFile.read(path, MOST_BYTES);
        JobReading reading = JobFile.read(path.toString(), bytes);
        if (reading instanceof JobReading.Faulty faulty) {
            throw new InputFault(faulty.faults().stream().map(FileFault::message).toList());
        }
        Job job = ((JobReading.Read) reading).job();
        FileHash file = FileHash.of(path.getFileName().toString(), bytes);
        return new JobSource(job, file, TableSource.read(tablePath(path, job), job.tableFile()));
    }

    /** The table's file; a link that leads out of the job's folder is not followed. */
    private static Path tablePath(Path jobFile, Job job) throws InputFault {
        try {
            Path table = jobFile.resolveSibling(job.tableFile());
            if (!Files.exists(table)) {
                throw new InputFault(jobFile + ": the table file " + job.tableFile()
                    + " is not there; name a file in the folder of the job or below it");
            }
            Path folder = jobFile.toAbsolutePath().getParent().toRealPath();
            if (!table.toRealPath().startsWith(folder)) {
                throw new InputFault(jobFile + ": the table file " + job.tableFile()
                    + " is a link that leads out of the folder of the job; put the table itself there");
            }
            return table;
        } catch (IOException | InvalidPathException e) {
            throw new InputFault(jobFile + ": the table file " + job.tableFile() + " cannot be read: " + e.getMessage());
        }
    }
}
