package org.garboard.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A job on a wedge-shaped hull, so shallow that an element which leans a little serves beside the keel and athwart it, in a folder of its own, whole or changed. */
record SampleTask(Path job) {
    /** The same body once more, flush. */
    static final String SECOND = """
          <further-transducers>
            <further>
              <transducer name="Second body">
                <length unit="mm">120</length>
                <width unit="mm">80</width>
                <height unit="mm">30</height>
                <corner-radius unit="mm">20</corner-radius>
                <stem-diameter unit="mm">20</stem-diameter>
                <element-inclination unit="deg">3</element-inclination>
              </transducer>
              <mounts><flush-through-hull/></mounts>
            </further>
          </further-transducers>
        """;

    static SampleTask in(Path folder) {
        Shell.copy("/cli/shallow/wedge.csv", folder);
        return new SampleTask(Shell.copy("/cli/job.xml", folder));
    }

    /** Replaces a part of the job, which must be there. */
    SampleTask with(String part, String replacement) throws IOException {
        String text = Files.readString(job);
        if (!text.contains(part)) {
            throw new IllegalArgumentException("the sample does not hold " + part);
        }
        Files.writeString(job, text.replace(part, replacement), StandardCharsets.UTF_8);
        return this;
    }

    /** A body that is wider than the bottom: no mount has a place for it. */
    SampleTask withoutAnswer() throws IOException {
        return with("<width unit=\"mm\">80", "<width unit=\"m\">2").with("<length unit=\"mm\">120", "<length unit=\"m\">2");
    }
}
