package org.garboard.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.exchange.xml.job.Bracket;
import org.garboard.exchange.xml.job.Fairing;
import org.garboard.exchange.xml.job.FurtherTransducer;
import org.garboard.exchange.xml.job.Job;
import org.garboard.exchange.xml.job.Mounts;
import org.garboard.exchange.xml.job.Pocket;
import org.garboard.exchange.xml.job.ThroughHull;
import org.garboard.exchange.xml.job.Transducer;

/** One transducer of a job file, the ways it may go in, and the wishes for them; of a faulty file any part may be missing. */
record TransducerTask(Optional<Transducer> transducer, Optional<Mounts> mounts, Optional<Pocket> pocket, Optional<ThroughHull> throughHull,
                      Optional<Fairing> fairing, Optional<Bracket> bracket) {

    /** All of a job, in its order. */
    static List<TransducerTask> of(Job job) {
        List<TransducerTask> tasks = new ArrayList<>();
        tasks.add(new TransducerTask(Optional.ofNullable(job.getTransducer()), Optional.ofNullable(job.getMounts()),
            Optional.ofNullable(job.getPocket()), Optional.ofNullable(job.getThroughHull()), Optional.ofNullable(job.getFairing()),
            Optional.ofNullable(job.getTransomBracket())));
        if (job.getFurtherTransducers() != null) {
            for (FurtherTransducer further : job.getFurtherTransducers().getFurther()) {
                tasks.add(new TransducerTask(Optional.ofNullable(further.getTransducer()), Optional.ofNullable(further.getMounts()),
                    Optional.ofNullable(further.getPocket()), Optional.ofNullable(further.getThroughHull()), Optional.ofNullable(further.getFairing()),
                    Optional.ofNullable(further.getTransomBracket())));
            }
        }
        return tasks;
    }
}
