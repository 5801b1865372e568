package org.garboard.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import org.garboard.cli.files.InputFault;
import org.garboard.cli.files.TableSource;
import org.garboard.exchange.Spelling;
import org.garboard.hull.Fit;
import org.garboard.hull.Hull;
import org.garboard.processors.Stop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.RunLast;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;
import picocli.CommandLine;

/** The program: takes the command line apart and turns what comes back into an exit code. */
@Command(
    name = "garboard",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    usageHelpWidth = 100,
    synopsisSubcommandLabel = "COMMAND",
    description = "Where on a boat's bottom a sonar transducer goes, how it goes in, and what to cut: "
        + "from the table of offsets to drawings.",
    footerHeading = "%nExit codes:%n",
    footer = {
        "  0  done",
        "  1  the program itself is at fault",
        "  2  wrong usage",
        "  3  an input file is at fault",
        "  4  the input is sound and the answer is no"})
public final class Garboard implements Runnable {
    private static final int ALL_PROCESSORS = Runtime.getRuntime().availableProcessors();

    /** In the order of the help. */
    private static final List<Map.Entry<String, Class<?>>> COMMANDS = List.of(
        Map.entry("table", TableCommand.class),
        Map.entry("probe", ProbeCommand.class),
        Map.entry("lines", LinesCommand.class),
        Map.entry("hydro", HydroCommand.class),
        Map.entry("trim", TrimCommand.class),
        Map.entry("site", SiteCommand.class),
        Map.entry("run", RunCommand.class),
        Map.entry("survey", SurveyCommand.class),
        Map.entry("compare", CompareCommand.class),
        Map.entry("cut", CutCommand.class),
        Map.entry("session", SessionCommand.class),
        Map.entry("new", NewCommand.class),
        Map.entry("check", CheckCommand.class),
        Map.entry("fleet", FleetCommand.class));

    @Spec
    private CommandSpec spec;

    private final Hulls hulls;
    private final Progress progress;
    private int processors;

    /** The program for one command line. */
    Garboard() {
        this(new Hulls(), Progress.QUIET, ALL_PROCESSORS);
    }

    /**
     * The program with what it keeps between command lines.
     *
     * @param progress is told what is being done
     * @param processors that it works on where a command line does not tell
     */
    Garboard(Hulls hulls, Progress progress, int processors) {
        this.hulls = hulls;
        this.progress = progress;
        this.processors = processors;
    }

    /** The program that a command belongs to. */
    static Garboard of(CommandSpec command) {
        return (Garboard) command.root().userObject();
    }

    public static void main(String[] arguments) {
        PrintWriter out = writer(FileDescriptor.out);
        PrintWriter err = writer(FileDescriptor.err);
        int code;
        if (ProgressBars.areWanted()) {
            try (ProgressBars bars = new ProgressBars(System.err)) {
                code = run(new Garboard(new Hulls(), bars, ALL_PROCESSORS), out, err, arguments);
            }
        } else {
            code = run(out, err, arguments);
        }
        out.flush();
        err.flush();
        System.exit(code);
    }

    /** Carries out one command line. Prints to these writers only. */
    static int run(PrintWriter out, PrintWriter err, String... arguments) {
        return run(new Garboard(), out, err, arguments);
    }

    static int run(Garboard program, PrintWriter out, PrintWriter err, String... arguments) {
        CommandLine line = commandLine(program, arguments)
            .registerConverter(Path.class, new FileNameConverter())
            .setOut(out)
            .setErr(err)
            .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
            .setCaseInsensitiveEnumValuesAllowed(false)
            .setExecutionStrategy(parsed -> Processors.carryOut(program.processors(), () -> new RunLast().execute(parsed)))
            .setParameterExceptionHandler((fault, given) -> wrongUsage(misspelt(fault, given)))
            .setExecutionExceptionHandler((fault, command, parsed) -> failure(fault, err));
        int code;
        try {
            code = line.execute(arguments);
        } catch (StackOverflowError | OutOfMemoryError | CancellationException fault) {
            code = failure(fault, err);
        }
        if (code != Exit.CANCELLED.code() && out.checkError()) {
            err.println("garboard: the results could not all be written to standard output");
            return Exit.PROGRAM.code();
        }
        return code;
    }

    /**
     * What takes the command line apart. Where the first word is a command, it alone is made: to look over all of them by reflection
     * takes longer than many a command.
     */
    static CommandLine commandLine(Garboard program, String... arguments) {
        CommandLine line = new CommandLine(program);
        List<Map.Entry<String, Class<?>>> asked = COMMANDS.stream().filter(command -> arguments.length > 0 && command.getKey().equals(arguments[0])).toList();
        (asked.isEmpty() ? COMMANDS : asked).forEach(command -> line.addSubcommand(command.getKey(), command.getValue()));
        return line;
    }

    /** Tells what is done next; gives up where the session was told to cancel. */
    void stage(String words) {
        Stop.heed();
        progress.stage(words);
    }

    void workOn(int processors) {
        this.processors = processors;
    }

    /** How many a command works on at once. */
    int processors() {
        return processors;
    }

    /** How far long work has come. */
    Progress progress() {
        return progress;
    }

    /** The hull drawn from a table; the one at hand where the same table was drawn before. */
    Hull hull(TableSource source, Fit fit) throws InputFault {
        stage("drawing the hull");
        return hulls.of(source, fit);
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "no command is given");
    }

    /** An option that there is not, with the one that was meant, rather than what is missing because of it. */
    private static ParameterException misspelt(ParameterException fault, String[] given) {
        boolean other = fault instanceof UnmatchedArgumentException unmatched && !unmatched.isUnknownOption();
        if (other || !(fault instanceof UnmatchedArgumentException || fault instanceof MissingParameterException)) {
            return fault;
        }
        Set<String> known = fault.getCommandLine().getCommandSpec().optionsMap().keySet();
        return Stream.of(given).filter(word -> word.matches("--[a-z].*")).map(word -> word.split("=", 2)[0]).filter(word -> !known.contains(word))
            .findFirst().map(word -> new ParameterException(fault.getCommandLine(), "there is no option " + word
                + Spelling.meant(word, known).map(meant -> "; did you mean " + meant + "?").orElse(""))).orElse(fault);
    }

    private static int wrongUsage(ParameterException fault) {
        CommandLine command = fault.getCommandLine();
        String name = command.getCommandSpec().qualifiedName();
        command.getErr().println(name + ": " + fault.getMessage().replaceFirst("^Error: ", ""));
        UnmatchedArgumentException.printSuggestions(fault, command.getErr());
        command.getErr().println("Try '" + name + " --help'.");
        return Exit.USAGE.code();
    }

    private static int failure(Throwable fault, PrintWriter err) {
        if (fault instanceof InputFault input) {
            input.messages().forEach(err::println);
            return Exit.INPUT.code();
        }
        if (fault instanceof CancellationException || Thread.currentThread().isInterrupted()) {
            err.println("cancelled; nothing more was written");
            return Exit.CANCELLED.code();
        }
        StackTraceElement[] trace = fault.getStackTrace();
        String origin = trace.length == 0 ? "" : " at " + trace[0];
        err.println("garboard: the program itself is at fault, not your files: "
            + (fault + origin).replaceAll("\\s+", " ") + "; please report this line");
        return Exit.PROGRAM.code();
    }

    private static PrintWriter writer(FileDescriptor descriptor) {
        return new PrintWriter(new OutputStreamWriter(new FileOutputStream(descriptor), StandardCharsets.UTF_8));
    }
}
