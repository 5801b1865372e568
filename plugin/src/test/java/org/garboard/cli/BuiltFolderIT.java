package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BuiltFolderIT {
    private static final List<String> WHAT_TO_INSTALL = List.of(
        "Install a Java runtime, version 17 or newer (Debian, Ubuntu: apt install openjdk-17-jre-headless;",
        "others: the OpenJDK package of your system), or set JAVA_HOME to the folder of one.");

    @TempDir
    private Path folder;

    @Test
    void holdsProgramLibrariesDemoAndSchemas() throws IOException {
        assertTrue(Files.isExecutable(BuiltFolder.LAUNCHER));
        assertTrue(Files.exists(BuiltFolder.demo("outboard-22").resolve("job.xml")));
        assertTrue(Files.exists(BuiltFolder.demo("outboard-39").resolve("offsets.csv")));
        assertTrue(Files.exists(BuiltFolder.HOME.resolve("schemas/garboard-job.xsd")));
        try (Stream<Path> jars = Files.list(BuiltFolder.HOME.resolve("lib"))) {
            assertTrue(jars.map(jar -> jar.getFileName().toString()).anyMatch(name -> name.startsWith("garboard-core-")));
        }
    }

    @Test
    void startsFromAnyFolderAndThroughLinks() throws Exception {
        Path strange = Files.createDirectories(folder.resolve("a folder with blanks"));
        Path link = Files.createSymbolicLink(strange.resolve("boats"), BuiltFolder.LAUNCHER);
        Path second = Files.createSymbolicLink(folder.resolve("again"), Path.of("a folder with blanks", "boats"));
        Shell direct = BuiltFolder.run(folder, Map.of(), BuiltFolder.LAUNCHER, "--version");
        assertEquals(new Shell(0, direct.out(), ""), direct);
        assertTrue(direct.out().startsWith("garboard "));
        assertEquals(direct, BuiltFolder.run(strange, Map.of(), link, "--version"));
        assertEquals(direct, BuiltFolder.run(folder, Map.of(), second, "--version"));
        assertEquals(direct, BuiltFolder.run(folder, Map.of(), "./again", "--version"));
        assertEquals(direct, BuiltFolder.run(BuiltFolder.HOME, Map.of(), "bin/garboard", "--version"));
        Files.delete(second);
        Files.delete(link);
    }

    @Test
    void startsWhenItsOwnFolderHasBlanksInItsName() throws Exception {
        Path copy = copied("gar board");
        assertEquals(0, BuiltFolder.run(folder, Map.of(), copy.resolve("bin/garboard"), "--version").code());
    }

    @Test
    void completesCommandsAndNamesInBash() throws Exception {
        String script = "source start/completion.bash; COMP_WORDS=(garboard new x --like out); COMP_CWORD=4; COMP_LINE='garboard new x --like out';"
            + " COMP_POINT=${#COMP_LINE}; _complete_garboard 2> /dev/null; echo \"${COMPREPLY[@]}\"";
        Shell shell = BuiltFolder.run(BuiltFolder.HOME, Map.of(), "bash", "-c", script);
        assertEquals(new Shell(0, "outboard-22 outboard-39\n", ""), shell);
    }

    @Test
    void bringsAManualPageForEveryCommand() throws Exception {
        try (Stream<Path> pages = Files.list(BuiltFolder.HOME.resolve("share/man/man1"))) {
            List<String> names = pages.map(page -> page.getFileName().toString()).toList();
            assertTrue(names.containsAll(List.of("garboard.1", "garboard-run.1", "garboard-fleet.1")), names.toString());
        }
    }

    /** Asked to use the archive or not to start at all, the runtime starts; once a jar is touched it does not, until the next start. */
    @Test
    void startsFromAnArchiveOfItsClasses() throws Exception {
        Path copy = copied("moved");
        Path launcher = copy.resolve("bin/garboard");
        assertEquals(0, BuiltFolder.run(folder, Map.of(), launcher, "--version").code());
        assertEquals(0, fromArchive(copy).code());
        byte[] first = Files.readAllBytes(copy.resolve("start/classes.of"));
        try (Stream<Path> jars = Files.list(copy.resolve("lib"))) {
            Files.setLastModifiedTime(jars.sorted().findFirst().orElseThrow(), FileTime.fromMillis(1_000_000_000_000L));
        }
        assertNotEquals(0, fromArchive(copy).code());
        assertEquals(0, BuiltFolder.run(folder, Map.of(), launcher, "--version").code());
        assertEquals(0, fromArchive(copy).code());
        assertFalse(Arrays.equals(first, Files.readAllBytes(copy.resolve("start/classes.of"))));
        try (Stream<Path> left = Files.list(copy.resolve("start"))) {
            assertEquals(List.of("classes.jsa", "classes.lst", "classes.of", "completion.bash"), left.map(file -> file.getFileName().toString()).sorted().toList());
        }
    }

    private Shell fromArchive(Path home) throws IOException, InterruptedException {
        String jars;
        try (DirectoryStream<Path> parser = Files.newDirectoryStream(home.resolve("lib"), "picocli-*.jar")) {
            jars = parser.iterator().next() + ":" + home + "/lib/*";
        }
        return BuiltFolder.run(folder, Map.of(), Path.of(System.getProperty("java.home"), "bin", "java"), "-Xshare:on",
            "-XX:SharedArchiveFile=" + home.resolve("start/classes.jsa"), "-XX:+UseSerialGC", "-cp", jars,
            Garboard.class.getName(), "--version");
    }

    private Path copied(String name) throws IOException {
        Path copy = folder.resolve(name);
        try (Stream<Path> files = Files.walk(BuiltFolder.HOME)) {
            for (Path file : files.toList()) {
                Files.copy(file, copy.resolve(BuiltFolder.HOME.relativize(file)), StandardCopyOption.COPY_ATTRIBUTES);
            }
        }
        return copy;
    }

    @Test
    void handsOnExitCodesAndArgumentsWithBlanks() throws Exception {
        Shell shell = BuiltFolder.run(folder, Map.of(), BuiltFolder.LAUNCHER, "table", "no such file.csv");
        assertEquals(new Shell(3, "", "no such file.csv: there is no such file\n"), shell);
        assertEquals(2, BuiltFolder.run(folder, Map.of(), BuiltFolder.LAUNCHER, "table").code());
    }

    /** The name is made and removed by the shell, since this process may be in such a locale too. */
    @Test
    void opensFilesOfAnyNameInAPlainLocale() throws Exception {
        Shell.copy("/cli/wedge.csv", folder);
        String script = "name=$(printf 'B\\303\\266\\303\\266t \\303\\237.csv'); cp wedge.csv \"$name\"; \"$0\" table \"$name\";"
            + " code=$?; rm \"$name\"; exit $code";
        for (String locale : List.of("C", "POSIX", "no_SUCH")) {
            Shell shell = BuiltFolder.run(folder, Map.of("LC_ALL", locale), "sh", "-c", script, BuiltFolder.LAUNCHER);
            assertEquals(0, shell.code(), locale + ": " + shell.err());
        }
    }

    @Test
    void saysWhatToInstallWhereThereIsNoJava() throws Exception {
        Path tools = Files.createDirectories(folder.resolve("tools"));
        for (String tool : List.of("dirname", "readlink", "sed", "head")) {
            script(tools.resolve(tool), "exec " + onPath(tool) + " \"$@\"");
        }
        Shell shell = BuiltFolder.run(folder, Map.of("PATH", tools.toString(), "JAVA_HOME", ""), BuiltFolder.LAUNCHER, "--version");
        assertEquals("garboard: no java was found on the PATH, and JAVA_HOME is not set.", shell.err().lines().findFirst().orElse(""));
        assertEquals(WHAT_TO_INSTALL, shell.err().lines().skip(1).toList());
        assertEquals(1, shell.code());
        assertEquals("", shell.out());
    }

    @Test
    void saysWhatToInstallWhereJavaIsTooOld() throws Exception {
        Path old = fakeJava("openjdk version \"11.0.2\" 2019-01-15");
        Shell asked = BuiltFolder.run(folder, Map.of("JAVA_HOME", old.toString()), BuiltFolder.LAUNCHER, "--version");
        assertEquals("garboard: " + old + "/bin/java is Java 11.0.2; Garboard needs 17 or newer.", asked.err().lines().findFirst().orElse(""));
        assertEquals(WHAT_TO_INSTALL, asked.err().lines().skip(1).toList());
        assertEquals(1, asked.code());
        Files.writeString(old.resolve("release"), "JAVA_VERSION=\"1.8.0_402\"\n");
        Shell released = BuiltFolder.run(folder, Map.of("JAVA_HOME", old.toString()), BuiltFolder.LAUNCHER, "--version");
        assertEquals("garboard: " + old + "/bin/java is Java 1.8.0_402; Garboard needs 17 or newer.",
            released.err().lines().findFirst().orElse(""));
    }

    @Test
    void saysWhenJavaHomeIsWrong() throws Exception {
        Shell shell = BuiltFolder.run(folder, Map.of("JAVA_HOME", folder.toString()), BuiltFolder.LAUNCHER, "--version");
        assertEquals("garboard: JAVA_HOME is " + folder + ", but there is no bin/java in it.", shell.err().lines().findFirst().orElse(""));
        assertEquals(1, shell.code());
    }

    /** A warning of the runtime would spoil CSV that goes into another program. */
    @Test
    void keepsWordsOfTheRuntimeOffStandardOutput() throws Exception {
        Shell shell = BuiltFolder.run(folder, Map.of("JAVA_TOOL_OPTIONS", "-Xlog:gc"), BuiltFolder.LAUNCHER, "--version");
        assertTrue(shell.out().matches("garboard [^\n]*\n"), shell.out());
        assertTrue(shell.err().contains("JAVA_TOOL_OPTIONS"), shell.err());
    }

    private static Path onPath(String tool) {
        return Stream.of(System.getenv("PATH").split(":"))
            .map(place -> Path.of(place, tool)).filter(Files::isExecutable).findFirst().orElseThrow();
    }

    /** A folder like a runtime's, whose program says this when asked for its version. */
    private Path fakeJava(String version) throws IOException {
        script(Files.createDirectories(folder.resolve("old java/bin")).resolve("java"), "echo '" + version + "' >&2");
        return folder.resolve("old java");
    }

    private static void script(Path file, String command) throws IOException {
        Files.writeString(file, "#!/bin/sh\n" + command + "\n", StandardCharsets.UTF_8);
        assertTrue(file.toFile().setExecutable(true));
    }
}
