package org.garboard.cli.print;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import org.garboard.cli.files.JobSource;
import org.garboard.exchange.TablePlace;
import org.garboard.mount.Check;
import org.garboard.mount.Verdict;
import org.junit.jupiter.api.Test;

class SourcesTest {

    /** Speeds of the job, drift, troll, cruise and top, and frequencies are left away; checks of one source stand together. */
    @Test
    void exact_eachSourceIsToldOnce() throws Exception {
        Sources sources = new Sources(JobSource.read(Path.of("src/main/demo/outboard-22/job.xml"), TablePlace.BELOW_JOB).job());
        for (String name : List.of("echo lost by tilt at rest, 80 kHz", "echo lost by tilt at rest, 120 kHz", "echo lost by tilt at cruise, 24 kn, 80 kHz",
                "echo lost by tilt at top, 28 kn, 120 kHz")) {
            sources.add(check(name, "echo"));
        }
        sources.add(check("wake shadow at drift, 1 kn; troll, 5 kn", "wakes"));
        sources.add(check("wake shadow at cruise, 24 kn; top, 28 kn", "wakes"));
        sources.add(check("cavitation at the bead round the face, top, 28 kn", "noses"));
        sources.add(check("room to the keel line", "echo"));
        StringWriter out = new StringWriter();
        sources.print(new PrintWriter(out));
        assertEquals(String.format("%nWHERE THE LIMITS COME FROM%n  echo lost by tilt at rest; echo lost by tilt; room to the keel line: echo%n"
            + "  wake shadow: wakes%n  cavitation at the bead round the face: noses%n"), out.toString());
    }

    private static Check check(String name, String source) {
        return new Check(name, Check.Sense.AT_MOST, 1, 2, "mm", 0.5, Verdict.MET, source, "It is met.");
    }
}
