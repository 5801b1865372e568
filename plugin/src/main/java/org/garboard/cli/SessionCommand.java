package org.garboard.cli;

import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import org.garboard.session.Session;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The program kept at hand for another program. */
@Command(
    name = "session",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    usageHelpWidth = 100,
    customSynopsis = "garboard session [--threads N]",
    description = {
        "Answers other commands on standard input and output, for a program that asks many.",
        "%nA request is a line: a name, a tab, the arguments as on a command line, between double quotes where they hold "
            + "blanks (in quotes \\\" \\\\ \\t \\n). Replies are lines: the request's name, a tab, out, err, progress or exit, a tab, "
            + "and a line that the command prints, what it is doing, or last its exit code. Requests are carried out one after "
            + "another. \"cancel NAME\" stops one, which ends with 130. A name that cannot be read is ? in the reply.",
        "%nRelative file names are from the folder in which the session was begun. It ends with 0 where the input ends, when all "
            + "is answered, and opens no network port.%n"})
final class SessionCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private Threads threads;

    @Override
    public Integer call() {
        ProcessHandle.current().parent().ifPresent(SessionCommand::endWith);
        Hulls hulls = new Hulls();
        int processors = Garboard.of(spec).processors();
        BufferedReader requests = new BufferedReader(new InputStreamReader(new FileInputStream(FileDescriptor.in), StandardCharsets.UTF_8));
        Session.serve(requests, spec.commandLine().getOut(),
            (out, err, progress, words) -> Garboard.run(new Garboard(hulls, progress::accept, processors), out, err, words));
        return Exit.DONE.code();
    }

    /** A host that is killed leaves nobody behind who works for it. */
    private static void endWith(ProcessHandle host) {
        host.onExit().thenRun(() -> Runtime.getRuntime().halt(Exit.DONE.code()));
    }
}
