package org.garboard.cli;

import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.Callable;
import org.garboard.cli.files.NewFiles;
import org.garboard.cli.files.OutputFile;
import org.garboard.cli.files.OutputRefused;
import org.garboard.cli.start.Beginning;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Begins a boat: a commented job and a table without figures, after a demo boat. */
@Command(
    name = "new",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    usageHelpWidth = 100,
    customSynopsis = "garboard new DIR --like BOAT",
    description = {
        "Begins a job for another boat: job.xml, a table without figures, and what to do next.",
        "%nThe job is that of a demo boat, with its words and its figures, and says so: it is refused until every figure "
            + "is the new boat's. Nothing that is in DIR already is written over.%n"})
final class NewCommand implements Callable<Integer> {
    private static final int LONGEST_NAME = 60;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "DIR", description = "The folder of the new boat; its name becomes the boat's.")
    private Path folder;

    @Option(names = "--like", paramLabel = "BOAT", required = true, completionCandidates = Demos.class,
        description = "The demo boat that is most like it: ${COMPLETION-CANDIDATES}.")
    private String like;

    /** The demo boats, for help and completion. */
    static final class Demos implements Iterable<String> {
        @Override
        public Iterator<String> iterator() {
            return Beginning.DEMOS.iterator();
        }
    }

    @Override
    public Integer call() {
        if (!Beginning.DEMOS.contains(like)) {
            throw new ParameterException(spec.commandLine(), "--like: there is no demo boat \"" + like + "\"; it is one of "
                + String.join(", ", Beginning.DEMOS));
        }
        Path name = folder.toAbsolutePath().normalize().getFileName();
        List<OutputFile> files = Beginning.files(like, boat(name == null ? "" : name.toString()));
        try {
            NewFiles.write(folder, files);
        } catch (OutputRefused refused) {
            spec.commandLine().getErr().println(refused.getMessage());
            return Exit.USAGE.code();
        }
        spec.commandLine().getOut().println("Begun in " + folder + ": job.xml, offsets.csv; README.txt says what to do next.");
        return Exit.DONE.code();
    }

    /** A folder's name as a boat's: "sea-otter_2" is Sea otter 2. */
    private static String boat(String folder) {
        String words = folder.replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
        String name = words.isEmpty() ? "New boat" : Character.toUpperCase(words.charAt(0)) + words.substring(1);
        return name.length() <= LONGEST_NAME ? name : name.substring(0, LONGEST_NAME).strip();
    }
}
