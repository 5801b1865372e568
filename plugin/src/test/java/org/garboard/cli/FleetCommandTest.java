package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.garboard.cli.fleet.Shard;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FleetCommandTest {
    private static final FileTime LONG_AGO = FileTime.fromMillis(1_000_000_000_000L);

    @TempDir
    private Path folder;

    @Test
    void oneBadJobDoesNotStopTheRest() throws IOException {
        Path bad = folder.resolve("bad").resolve("job.xml");
        Files.createDirectories(bad.getParent());
        Files.writeString(bad, "<job/>");
        Shell fleet = Shell.run("fleet", boat("a"), bad.getParent(), folder.resolve("none.xml"), "--out", folder.resolve("out"));
        assertEquals(3, fleet.code(), fleet.out() + fleet.err());
        List<String> csv = Files.readAllLines(folder.resolve("out/summary.csv"));
        assertEquals(4, csv.size());
        assertEquals("job,boat,transducer,exit,outcome,mount,side,x_m,y_m,governing_check,utilisation,checks_not_known,answer", csv.get(0));
        assertTrue(csv.get(1).startsWith("a,\"Wedge, hull no. W-1\",") && csv.get(1).contains(",0,site,"), csv.get(1));
        assertTrue(csv.get(2).startsWith("bad,,,3,fault,,,,,,,,") && csv.get(2).contains("job.xml:1:1:"), csv.get(2));
        assertTrue(csv.get(3).startsWith("none,,,3,fault,") && csv.get(3).endsWith("there is no such file"), csv.get(3));
        assertEquals(3, fleet.outLines().size());
        String page = Files.readString(folder.resolve("out/summary.html"));
        assertTrue(page.contains("1 with a site, 0 with a site but not all drawn, 0 without a site, 2 at fault."), page);
        assertTrue(page.contains("<a href=\"a/report.html\">a</a>"));
    }

    /** What is at hand is kept untouched; what was spoilt or whose job changed is made anew; the summary is the same. */
    @Test
    void goesOnWhereItStopped() throws IOException {
        Path first = boat("first");
        Path second = boat("second");
        Path out = folder.resolve("out");
        assertEquals(0, Shell.run("fleet", first, "--out", out).code());
        Path record = out.resolve("first/record.xml");
        Files.setLastModifiedTime(record, LONG_AGO);
        Shell again = Shell.run("fleet", first, second, "--out", out);
        assertEquals(0, again.code(), again.err());
        assertEquals(LONG_AGO, Files.getLastModifiedTime(record));
        assertTrue(again.outLines().get(0).startsWith("first: site, kept: "), again.out());
        assertTrue(again.outLines().get(1).startsWith("second: site: "), again.out());
        byte[] summary = Files.readAllBytes(out.resolve("summary.csv"));

        Files.delete(out.resolve("first/set.pdf"));
        assertTrue(Shell.run("fleet", first, second, "--out", out).outLines().get(0).startsWith("first: site: "));
        assertTrue(Files.exists(out.resolve("first/set.pdf")));
        Path job = second.resolve("job.xml");
        Files.writeString(job, Files.readString(job) + "\n");
        List<String> lines = Shell.run("fleet", first, second, "--out", out).outLines();
        assertTrue(lines.get(0).startsWith("first: site, kept: ") && lines.get(1).startsWith("second: site: "), lines.toString());
        assertEquals(new String(summary), Files.readString(out.resolve("summary.csv")));
    }

    @Test
    void law_shardsJoinToTheSameSummary() throws IOException {
        List<Object> jobs = new ArrayList<>();
        for (String name : List.of("a", "b", "c")) {
            jobs.add(boat(name));
        }
        Path apart = folder.resolve("apart");
        for (String shard : List.of("2/2", "1/2")) {
            assertEquals(0, run(jobs, "--out", apart, "--shard", shard).code());
            assertFalse(Files.exists(apart.resolve("summary.csv")));
        }
        assertEquals(0, run(jobs, "--out", apart).code());
        Path whole = folder.resolve("whole");
        assertEquals(0, run(jobs, "--out", whole, "--threads", "1").code());
        for (String name : List.of("summary.csv", "summary.html", "b/record.xml")) {
            assertEquals(Files.readString(whole.resolve(name)), Files.readString(apart.resolve(name)), name);
        }
    }

    @Test
    void law_everyJobFallsToOneShard() {
        List<Integer> all = Stream.iterate(0, k -> k + 1).limit(47).toList();
        List<Integer> together = new ArrayList<>();
        for (int part = 1; part <= 20; part++) {
            List<Integer> mine = new Shard(part, 20).of(all);
            assertTrue(mine.size() == 2 || mine.size() == 3);
            together.addAll(mine);
        }
        assertEquals(all, together.stream().sorted().toList());
    }

    /** An empty name, as a shell makes of a variable that is not set, is not this folder. */
    @Test
    void anEmptyFolderIsRefused() throws IOException {
        for (List<Object> words : List.<List<Object>>of(List.of("fleet", boat("a"), "--out", ""), List.of("run", folder.resolve("a/job.xml"), "--out", ""),
            List.of("survey", folder, folder, "--out", ""))) {
            Shell shell = Shell.run(words.toArray());
            assertEquals(2, shell.code());
            assertTrue(shell.err().contains(": --out is empty; name a folder, or . for this one\n"), shell.err());
        }
    }

    @Test
    void refusesWhatItCannotShareOut() throws IOException {
        assertTrue(Shell.run("fleet", boat("a"), "--out", folder, "--shard", "4/3").err()
            .startsWith("garboard fleet: --shard is 4/3; there is no part 4 of 3\n"));
        assertTrue(Shell.run("fleet", boat("b"), "--out", folder, "--shard", "third").err()
            .startsWith("garboard fleet: --shard is \"third\"; write which part of how many, such as 3/20\n"));
        Path other = folder.resolve("else/A");
        Files.createDirectories(other);
        Shell twice = Shell.run("fleet", folder.resolve("a"), other, "--out", folder.resolve("out"));
        assertEquals(new Shell(3, "", other.resolve("job.xml") + ": would be written to the same folder, A, as " + folder.resolve("a/job.xml")
            + "; give one of their folders another name\n"), twice);
    }

    private Path boat(String name) throws IOException {
        return SampleTask.in(Files.createDirectories(folder.resolve(name))).job().getParent();
    }

    private static Shell run(List<Object> jobs, Object... options) {
        List<Object> words = new ArrayList<>(List.of("fleet"));
        words.addAll(jobs);
        words.addAll(List.of(options));
        return Shell.run(words.toArray());
    }
}
