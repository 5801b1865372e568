package org.garboard.exchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.garboard.exchange.xml.job.Job;

/** Reads {@code job.xml}, as {@code garboard-job.xsd} describes it. */
public final class JobFile {

    private JobFile() {
    }

    /**
     * The job in a file, or everything that is wrong with the file.
     *
     * @param fileName for the messages, and nothing else
     * @param bytes the whole file
     * @param tables where its table may lie
     */
    public static JobReading read(String fileName, byte[] bytes, TablePlace tables) {
        try {
            XmlReading reading = XmlReading.of(XmlKind.JOB, fileName, bytes);
            Job bean = reading.bean(Job.class).orElse(new Job());
            List<FileFault> faults = new ArrayList<>(reading.faults());
            faults.addAll(new JobRanges(fileName, reading, tables).faults(bean));
            if (!faults.isEmpty()) {
                faults.sort(Comparator.comparingInt(FileFault::line).thenComparingInt(FileFault::column));
                return new JobReading.Faulty(faults);
            }
            return new JobReading.Read(JobMapping.toJobs(bean));
        } catch (FaultyFile e) {
            return new JobReading.Faulty(e.faults());
        }
    }
}
