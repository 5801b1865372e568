package org.garboard.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.garboard.cli.files.InputFault;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
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
        "  4  the input is sound and the answer is no"},
    subcommands = {
        TableCommand.class, ProbeCommand.class, LinesCommand.class, HydroCommand.class, TrimCommand.class, SiteCommand.class, RunCommand.class})
public final class Garboard implements Runnable {
    @Spec
    private CommandSpec spec;

    public static void main(String[] arguments) {
        PrintWriter out = writer(FileDescriptor.out);
        PrintWriter err = writer(FileDescriptor.err);
        int code = run(out, err, arguments);
        out.flush();
        err.flush();
        System.exit(code);
    }

    /** Carries out one command line. Prints to these writers only. */
    static int run(PrintWriter out, PrintWriter err, String... arguments) {
        CommandLine line = new CommandLine(new Garboard())
            .registerConverter(Path.class, new FileNameConverter())
            .setOut(out)
            .setErr(err)
            .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
            .setCaseInsensitiveEnumValuesAllowed(false)
            .setParameterExceptionHandler((fault, given) -> wrongUsage(fault))
            .setExecutionExceptionHandler((fault, command, parsed) -> failure(fault, err));
        int code;
        try {
            code = line.execute(arguments);
        } catch (StackOverflowError | OutOfMemoryError tooSmall) {
            code = failure(tooSmall, err);
        }
        if (out.checkError()) {
            err.println("garboard: the results could not all be written to standard output");
            return Exit.PROGRAM.code();
        }
        return code;
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "no command is given");
    }

    private static int wrongUsage(ParameterException fault) {
        CommandLine command = fault.getCommandLine();
        String name = command.getCommandSpec().qualifiedName();
        command.getErr().println(name + ": " + fault.getMessage());
        UnmatchedArgumentException.printSuggestions(fault, command.getErr());
        command.getErr().println("Try '" + name + " --help'.");
        return Exit.USAGE.code();
    }

    private static int failure(Throwable fault, PrintWriter err) {
        if (fault instanceof InputFault input) {
            input.messages().forEach(err::println);
            return Exit.INPUT.code();
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
