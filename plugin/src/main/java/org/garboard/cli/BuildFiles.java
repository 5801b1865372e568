package org.garboard.cli;

import java.io.IOException;
import java.nio.file.Path;
import org.garboard.cli.manual.ManPages;
import picocli.CommandLine;

/** What the build has the program make of itself: pages for man(1), into the folder that is named. */
final class BuildFiles {

    private BuildFiles() {
    }

    public static void main(String[] arguments) throws IOException {
        ManPages.write(new CommandLine(new Garboard()), Version.number(), Path.of(arguments[0]));
    }
}
