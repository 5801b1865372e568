package org.garboard.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PipedReader;
import java.io.PipedWriter;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.Writer;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.function.Consumer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(20)
class SessionTest {
    private final CountDownLatch begun = new CountDownLatch(1);
    private final CountDownLatch released = new CountDownLatch(1);

    /** Says its words; "wait" waits until it is released or interrupted, "fail" throws. */
    private int echo(PrintWriter out, PrintWriter err, Consumer<String> progress, String... words) {
        switch (words.length == 0 ? "" : words[0]) {
            case "wait" -> {
                progress.accept("waiting");
                begun.countDown();
                try {
                    released.await();
                } catch (InterruptedException stop) {
                    Thread.currentThread().interrupt();
                    return Session.CANCELLED;
                }
            }
            case "fail" -> throw new IllegalStateException("two\nlines");
            default -> {
                out.print(String.join("|", words));
                out.print("\r\nlast");
                err.println("told");
            }
        }
        return words.length;
    }

    private List<String> answers(String requests) {
        StringWriter replies = new StringWriter();
        Session.serve(new BufferedReader(new StringReader(requests)), new PrintWriter(replies), this::echo);
        return replies.toString().lines().toList();
    }

    @AfterEach
    void release() {
        released.countDown();
    }

    @Test
    void whatACommandPrintsComesLineByLineAndItsCodeLast() {
        assertEquals(List.of("7\terr\ttold", "7\tout\ta|b c", "7\tout\tlast", "7\texit\t2"),
            answers("7\ta \"b c\"\n").stream().sorted((a, b) -> a.contains("exit") ? 1 : b.contains("exit") ? -1 : a.compareTo(b)).toList());
    }

    @Test
    void requestsAreAnsweredInTheirOrder() {
        assertEquals(List.of("1\texit\t1", "2\texit\t3", "3\texit\t2"),
            answers("1\ta\n2\ta b c\n\n3\ta b\n").stream().filter(line -> line.contains("exit")).toList());
    }

    @Test
    void whatThrowsIsToldAndTheNextIsAnswered() {
        assertEquals(List.of("1\terr\tthe program itself is at fault: java.lang.IllegalStateException: two lines", "1\texit\t1"),
            answers("1\tfail\n2\tx\n").subList(0, 2));
        assertTrue(answers("1\tfail\n2\tx\n").contains("2\texit\t1"));
    }

    @Test
    void badLinesAreToldAndTheNextIsAnswered() {
        List<String> answers = answers("nonsense\n2\t\"open\n3\tsession\n4\tx\n");
        assertEquals(List.of("2\texit\t2", "3\texit\t2", "4\texit\t1", "?\texit\t2"), answers.stream().filter(line -> line.contains("exit")).sorted(
            (a, b) -> Character.compare(a.charAt(0), b.charAt(0))).toList());
        assertTrue(answers.contains("3\terr\ta session does not begin another; ask for a command"));
    }

    @Test
    void theInputsEndWaitsForWhatWasAsked() {
        assertTrue(answers("1\tx\n2\tx\n3\tx\n").contains("3\texit\t1"));
    }

    @Test
    void secondWaitsAndMayBeCancelledAndTheFirstToo() throws Exception {
        Line line = new Line();
        line.ask("1\twait");
        begun.await();
        line.ask("2\tx");
        line.ask("1\tx");
        line.ask("2\ty");
        line.ask("3\tcancel 2");
        line.ask("4\tcancel nobody");
        line.ask("5\tcancel");
        line.ask("6\tcancel 1");
        line.ask("7\tx");
        List<String> answers = line.end();
        assertEquals(List.of("1\tprogress\twaiting",
            "?\terr\ta request named 1 is not answered yet; give this one another name", "?\texit\t2",
            "?\terr\ta request named 2 is not answered yet; give this one another name", "?\texit\t2",
            "2\texit\t130", "3\texit\t0",
            "4\terr\tno request named nobody waits or runs; it may be answered already", "4\texit\t2",
            "5\terr\tcancel takes the name of one request", "5\texit\t2"), answers.subList(0, 11));
        assertTrue(answers.containsAll(List.of("6\texit\t0", "1\texit\t130", "7\texit\t1")));
        assertFalse(answers.stream().anyMatch(each -> each.startsWith("2\tout")));
    }

    @Test
    void anInterruptDoesNotReachTheNext() throws Exception {
        Line line = new Line();
        line.ask("1\twait");
        begun.await();
        line.ask("2\tcancel 1");
        line.ask("3\twait");
        line.ask("4\tx");
        line.awaitLine("1\texit\t130");
        released.countDown();
        List<String> answers = line.end();
        assertTrue(answers.containsAll(List.of("1\texit\t130", "3\texit\t1", "4\texit\t1")), answers::toString);
    }

    @Test
    void noMoreThanAHundredWait() throws Exception {
        Line line = new Line();
        line.ask("first\twait");
        begun.await();
        for (int i = 0; i <= 100; i++) {
            line.ask(i + "\tx");
        }
        line.awaitLine("100\texit\t2");
        released.countDown();
        List<String> answers = line.end();
        assertTrue(answers.contains("100\terr\t100 requests wait already; ask again when they are answered"));
        assertTrue(answers.contains("99\texit\t1"));
    }

    @Test
    void aHostThatNoLongerReadsEndsIt() {
        Writer closed = new Writer() {
            @Override
            public void write(char[] text, int from, int length) throws IOException {
                throw new IOException("broken pipe");
            }

            @Override
            public void flush() throws IOException {
                throw new IOException("broken pipe");
            }

            @Override
            public void close() {
                // nothing is open
            }
        };
        Assertions.assertTimeoutPreemptively(Duration.ofSeconds(10), () ->
            Session.serve(new BufferedReader(new StringReader("1\tx\n2\twait\n")), new PrintWriter(closed), this::echo));
    }

    /** A session that is asked line by line. */
    private final class Line {
        private final PipedWriter requests = new PipedWriter();
        private final StringWriter replies = new StringWriter();
        private final Thread host;

        Line() throws IOException {
            BufferedReader reader = new BufferedReader(new PipedReader(requests, 1 << 16));
            host = new Thread(() -> Session.serve(reader, new PrintWriter(replies), SessionTest.this::echo));
            host.start();
        }

        void ask(String request) throws IOException {
            requests.write(request + "\n");
            requests.flush();
        }

        void awaitLine(String line) throws InterruptedException {
            while (replies.toString().lines().noneMatch(line::equals)) {
                Thread.sleep(10);
            }
        }

        List<String> end() throws Exception {
            requests.close();
            host.join();
            return replies.toString().lines().toList();
        }
    }
}
