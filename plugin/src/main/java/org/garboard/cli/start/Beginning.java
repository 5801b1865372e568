package org.garboard.cli.start;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.garboard.cli.files.OutputFile;

/** The files that a new boat begins with, after a demo boat. */
public final class Beginning {
    /** The demo boats, from the plainest on. */
    public static final List<String> DEMOS = List.of("outboard-22", "outboard-39", "stepped-38", "inboard-58", "displacement-30");

    private Beginning() {
    }

    /**
     * Job, table and what to do next.
     *
     * @param demo one of {@link #DEMOS}
     * @param boat name of the new boat, for titles
     */
    public static List<OutputFile> files(String demo, String boat) {
        return List.of(
            file("job.xml", StartedJob.of(text(demo, "job.xml"), demo, boat)),
            file("offsets.csv", BlankTable.of(text(demo, "offsets.csv"), boat)),
            file("README.txt", nextSteps(boat, demo)));
    }

    private static OutputFile file(String name, String text) {
        return new OutputFile(name, text.getBytes(StandardCharsets.UTF_8));
    }

    static String text(String demo, String name) {
        try (InputStream in = Beginning.class.getResourceAsStream("/org/garboard/demo/" + demo + "/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String nextSteps(String boat, String demo) {
        return """
            %1$s, begun after the demo boat %2$s
            %3$s

            1. offsets.csv is a table of offsets without figures. Put in the stations, lines and readings of your boat; add or
               take away columns and rows as you need. A cell stays empty where a line does not cross a station. The demo boat's
               own table, filled in, stands in demo/%2$s of the program.
               No table? "garboard table --worksheet worksheet.pdf" prints a blank form for taking heights off the hull in the
               yard, and "garboard new" with --like displacement-30 begins with the table that takes them.
            2. garboard table offsets.csv
               reads it, tells everything that is wrong with it, and which readings look like slips of the pen.
            3. job.xml holds the rest: draught, weights, speeds, drive, what is on the bottom, skin, rooms, the transducer.
               Every figure in it is still the demo boat's. Put in your own, or take the element away.
            4. garboard check job.xml
               tells what is wrong, what is still the demo boat's, and what is not told and so will be NOT KNOWN.
               When all is yours, take like="%2$s" out of job.xml.
            5. garboard site job.xml
               tells where the transducer may go, and why not elsewhere.
            6. garboard run job.xml --out drawings
               draws the sheets.

            A hole below the waterline in the wrong place sinks a boat. Measure and look inside before you cut; cored hulls,
            dust, wiring and structure have their own dangers. The sheets do not replace a builder or surveyor who is licensed
            to judge the boat, nor your local codes.
            """.formatted(boat, demo, "=".repeat((boat + ", begun after the demo boat " + demo).length()));
    }
}
