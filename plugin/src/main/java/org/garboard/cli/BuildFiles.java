package org.garboard.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.garboard.cli.manual.ManPages;
import picocli.AutoComplete;
import picocli.CommandLine;

/** What the build has the program make of itself, into its folder: what the Tab key completes in bash, and pages for man(1). */
final class BuildFiles {

    private BuildFiles() {
    }

    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments[0]);
        CommandLine program = Garboard.commandLine(new Garboard());
        Files.writeString(folder.resolve("start/completion.bash"), AutoComplete.bash("garboard", program), StandardCharsets.UTF_8);
        ManPages.write(program, Version.number(), folder.resolve("share/man/man1"));
    }
}
