package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The session of the built folder, asked through its pipes as a host asks it. */
@Timeout(60)
class SessionIT {
    @TempDir
    private Path folder;
    private Process session;
    private BufferedReader replies;

    @BeforeEach
    void begin() throws Exception {
        session = new ProcessBuilder(BuiltFolder.LAUNCHER.toString(), "session").directory(folder.toFile()).start();
        replies = session.inputReader(StandardCharsets.UTF_8);
    }

    @AfterEach
    void end() {
        session.destroyForcibly();
    }

    private void ask(String request) throws Exception {
        OutputStream in = session.getOutputStream();
        in.write((request + "\n").getBytes(StandardCharsets.UTF_8));
        in.flush();
    }

    private List<String> answer(String id) throws Exception {
        List<String> lines = new ArrayList<>();
        for (String line = replies.readLine(); line != null; line = replies.readLine()) {
            lines.add(line);
            if (line.startsWith(id + "\texit\t")) {
                return lines;
            }
        }
        throw new AssertionError("the session ended after " + lines);
    }

    @Test
    void aCommandPrintsWhatItPrintsByItself() throws Exception {
        Path table = BuiltFolder.demo("outboard-22").resolve("offsets.csv");
        ask("p\tprobe \"" + table + "\" --at 5.2,0.3 4,-0.2");
        Shell alone = Shell.run("probe", table, "--at", "5.2,0.3", "4,-0.2");
        List<String> lines = answer("p");
        assertEquals(alone.outLines(), lines.stream().filter(line -> line.startsWith("p\tout\t")).map(line -> line.substring(6)).toList());
        assertEquals("p\texit\t0", lines.get(lines.size() - 1));
    }

    @Test
    void filesAtFaultEndWithThree() throws Exception {
        ask("1\tsite \"no such job.xml\"");
        assertEquals(List.of("1\terr\tno such job.xml: there is no such file", "1\texit\t3"), answer("1"));
    }

    @Test
    void aCancelledRunWritesNothing() throws Exception {
        Path out = folder.resolve("drawings");
        ask("r\trun \"" + BuiltFolder.demo("inboard-58").resolve("job.xml") + "\" --out \"" + out + "\"");
        String line = replies.readLine();
        assertTrue(line.startsWith("r\tprogress\t"), line);
        ask("c\tcancel r");
        assertEquals(List.of("c\texit\t0"), answer("c").stream().filter(each -> each.startsWith("c")).toList());
        assertTrue(answer("r").contains("r\texit\t130"));
        assertFalse(Files.exists(out));
    }

    @Test
    void theInputsEndEndsIt() throws Exception {
        ask("1\t--version");
        answer("1");
        session.getOutputStream().close();
        assertTrue(session.waitFor(10, TimeUnit.SECONDS));
        assertEquals(0, session.exitValue());
        assertEquals("", new BufferedReader(new InputStreamReader(session.getErrorStream(), StandardCharsets.UTF_8)).readLine() == null ? "" : "said");
    }

    /** The host is a shell that is killed while its session works; its own pipe stays open, as a test's does not. */
    @Test
    void aHostThatIsKilledTakesItAlong() throws Exception {
        Path pid = folder.resolve("pid");
        Process host = new ProcessBuilder("sh", "-c", "mkfifo pipe; sleep 50 > pipe & \"$0\" session < pipe & echo $! > pid; wait",
            BuiltFolder.LAUNCHER.toString()).directory(folder.toFile()).start();
        while (!Files.exists(pid) || Files.size(pid) == 0) {
            Thread.sleep(20);
        }
        ProcessHandle java = ProcessHandle.of(Long.parseLong(Files.readString(pid).strip())).orElseThrow();
        Thread.sleep(1500);
        assertTrue(java.isAlive());
        List<ProcessHandle> helpers = host.descendants().filter(each -> each.pid() != java.pid()).toList();
        host.destroyForcibly();
        java.onExit().get(10, TimeUnit.SECONDS);
        helpers.forEach(ProcessHandle::destroyForcibly);
        assertFalse(java.isAlive());
    }
}
