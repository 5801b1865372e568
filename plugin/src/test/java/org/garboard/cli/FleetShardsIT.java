package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.garboard.reader.OutsideReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Shards started by GNU parallel, as README shows it, join to the summary of the whole. */
class FleetShardsIT {
    @TempDir
    private Path folder;

    @Test
    void joinToTheSameSummary() throws Exception {
        OutsideReader.PARALLEL.require();
        for (String boat : new String[] {"a", "b", "c", "d", "e"}) {
            SampleTask.in(Files.createDirectories(folder.resolve("boats").resolve(boat)));
        }
        String garboard = BuiltFolder.LAUNCHER.toString();
        Shell shards = BuiltFolder.run(folder, Map.of(), "sh", "-c",
            "seq 3 | parallel --will-cite \"$0\" fleet boats/* --out apart --threads 1 --shard {}/3", garboard);
        assertEquals(0, shards.code(), shards.err());
        assertEquals(5, shards.out().lines().count(), shards.out());
        Shell joined = BuiltFolder.run(folder, Map.of(), "sh", "-c", "\"$0\" fleet boats/* --out apart", garboard);
        assertEquals(0, joined.code(), joined.err());
        assertTrue(joined.out().lines().allMatch(line -> line.contains(", kept")), joined.out());
        assertEquals(0, BuiltFolder.run(folder, Map.of(), "sh", "-c", "\"$0\" fleet boats/* --out whole", garboard).code());
        for (String name : new String[] {"summary.csv", "summary.html"}) {
            assertEquals(Files.readString(folder.resolve("whole").resolve(name)), Files.readString(folder.resolve("apart").resolve(name)));
        }
    }
}
