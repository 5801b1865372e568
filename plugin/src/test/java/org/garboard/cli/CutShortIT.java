package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.garboard.cli.files.InputFault;
import org.garboard.cli.files.RecordedFolder;
import org.garboard.exchange.FileHash;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Runs that are killed, or find no room on the disk: what stands there afterwards is the old set or the new one, whole. */
class CutShortIT {
    /** Few in every build; as many as one likes with {@code -Dgarboard.kills=}. */
    private static final int KILLS = Integer.getInteger("garboard.kills", 4);
    private static final long SEED = Long.getLong("garboard.kills.seed", 58);

    @TempDir
    private Path folder;
    private Path out;
    private final Map<String, Path> jobs = new TreeMap<>();

    @BeforeEach
    void twoRevisions() throws IOException {
        out = folder.resolve("out");
        Path demo = BuiltFolder.demo("outboard-22");
        Files.copy(demo.resolve("offsets.csv"), folder.resolve("offsets.csv"));
        String job = Files.readString(demo.resolve("job.xml"));
        for (String revision : List.of("A", "B")) {
            String text = job.replaceFirst("<revision>[^<]*</revision>", "<revision>" + revision + "</revision>");
            jobs.put(revision, Files.writeString(folder.resolve(revision + ".xml"), text));
        }
        assertNotEquals(Files.readString(jobs.get("A")), Files.readString(jobs.get("B")));
    }

    private ProcessBuilder run(String revision) {
        return new ProcessBuilder(BuiltFolder.LAUNCHER.toString(), "run", jobs.get(revision).toString(), "--out", out.toString())
            .redirectErrorStream(true).redirectOutput(folder.resolve("words").toFile());
    }

    @Test
    void law_aKilledRunLeavesTheOldSetOrTheNewOne() throws Exception {
        long begin = System.nanoTime();
        assertEquals(0, run("A").start().waitFor(), () -> words());
        long takes = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - begin);
        String stands = "A";
        Random random = new Random(SEED);
        for (int kill = 0; kill < KILLS; kill++) {
            String next = stands.equals("A") ? "B" : "A";
            Process process = run(next).start();
            process.waitFor(takes * (30 + random.nextInt(75)) / 100, TimeUnit.MILLISECONDS);
            process.destroyForcibly().waitFor();
            String found = revisionOfTheWholeSet();
            assertTrue(found.equals(stands) || found.equals(next), found);
            stands = found;
        }
        assertEquals(0, run("A").start().waitFor(), () -> words());
        assertEquals("A", revisionOfTheWholeSet());
        assertEquals(List.of(), hidden());
    }

    /** A disk with room for the old set and not for the new one beside it. */
    @Test
    void law_aFullDiskLeavesTheOldSet() throws Exception {
        assertEquals(0, run("A").start().waitFor(), () -> words());
        Path whole = out;
        for (int kilobytes : new int[] {4, 40}) {
            out = Files.createDirectory(folder.resolve("small" + kilobytes));
            Path left = Files.createDirectory(folder.resolve("left" + kilobytes));
            Shell full = BuiltFolder.run(folder, Map.of(), small(kilobytes, "cp -a " + whole + "/. " + out + " && "
                + String.join(" ", run("B").command()) + "; code=$?; cp -a " + out + "/. " + left + "; exit $code", whole));
            assertEquals(Exit.USAGE.code(), full.code(), full.err());
            assertEquals(1, full.err().lines().count(), full.err());
            assertTrue(full.err().startsWith("cannot write to " + out + ": "), full.err());
            out = left;
            assertEquals("A", revisionOfTheWholeSet());
            assertEquals(List.of(), hidden());
        }
    }

    /** A file system in memory where the machine allows one, else a limit on the size of each file. */
    private Object[] small(int kilobytes, String script, Path whole) throws Exception {
        if (BuiltFolder.run(folder, Map.of(), "unshare", "-rm", "true").code() != 0) {
            return new Object[] {"bash", "-c", script.replace(BuiltFolder.LAUNCHER.toString(), "ulimit -f " + kilobytes + "; " + BuiltFolder.LAUNCHER)};
        }
        long blocks = 0;
        try (Stream<Path> files = Files.list(whole)) {
            for (Path file : files.toList()) {
                blocks += (Files.size(file) + 4095) / 4096;
            }
        }
        return new Object[] {"unshare", "-rm", "bash", "-c", "mount -t tmpfs -o size=" + (4 * blocks + kilobytes) + "k none " + out + " && " + script};
    }

    /** Every file as the record says and no other. */
    private String revisionOfTheWholeSet() throws InputFault, IOException {
        RecordedFolder recorded = RecordedFolder.read(out);
        TreeSet<String> names = new TreeSet<>(List.of("record.xml"));
        for (FileHash file : recorded.files().keySet()) {
            names.add(file.name());
        }
        try (Stream<Path> files = Files.list(out)) {
            assertEquals(names, new TreeSet<>(files.map(file -> file.getFileName().toString()).filter(name -> !name.startsWith(".")).toList()));
        }
        return new String(recorded.bytes(), StandardCharsets.UTF_8).contains("revision=\"A\"") ? "A" : "B";
    }

    private List<String> hidden() throws IOException {
        try (Stream<Path> files = Files.list(out)) {
            return files.map(file -> file.getFileName().toString()).filter(name -> name.startsWith(".")).toList();
        }
    }

    private String words() {
        try {
            return Files.readString(folder.resolve("words"));
        } catch (IOException e) {
            return e.toString();
        }
    }
}
