package org.garboard.session;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Carries out requests one after another, in the order in which they come; those that come meanwhile wait.
 *
 * <p>{@code cancel ID} is answered at once: a request that waits is dropped, one that runs is told to give up, which it does
 * at its next stage. Either ends with {@link #CANCELLED}, unless it was done already. At the end of input what was
 * asked is finished, and the session ends.
 */
public final class Session {
    /** As shells say of a program that was interrupted. */
    public static final int CANCELLED = 130;
    private static final int USAGE = 2;
    private static final int FAILED = 1;
    /** More than these may not wait: our choice, a host that asks faster than it is answered is at fault. */
    private static final int MOST_WAITING = 100;
    private static final String CANCEL = "cancel";
    private static final String SESSION = "session";

    private final Program program;
    private final Replies replies;
    private final Map<String, Request> waiting = new LinkedHashMap<>();
    private final Thread worker = new Thread(this::work, "session");
    private String running = "";
    private boolean ended;

    private Session(Program program, Replies replies) {
        this.program = program;
        this.replies = replies;
    }

    /** Serves until the input ends or the replies are no longer read. */
    public static void serve(BufferedReader requests, PrintWriter replies, Program program) {
        Session session = new Session(program, new Replies(replies));
        session.worker.setDaemon(true);
        session.worker.start();
        try {
            session.read(requests);
        } finally {
            session.end();
        }
    }

    private void read(BufferedReader requests) {
        try {
            for (String line = requests.readLine(); line != null && !replies.gone(); line = requests.readLine()) {
                if (!line.isBlank()) {
                    take(line);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void take(String line) {
        try {
            Request request = Request.of(line);
            if (!request.words().isEmpty() && request.words().get(0).equals(CANCEL)) {
                cancel(request);
            } else {
                queue(request);
            }
        } catch (BadRequest bad) {
            refuse(bad.id(), bad.getMessage());
        }
    }

    private void refuse(String id, String message) {
        replies.line(id, Replies.ERR, message);
        replies.exit(id, USAGE);
    }

    private synchronized void queue(Request request) throws BadRequest {
        if (request.words().contains(SESSION) && request.words().get(0).equals(SESSION)) {
            throw new BadRequest(request.id(), "a session does not begin another; ask for a command");
        }
        if (waiting.containsKey(request.id()) || running.equals(request.id())) {
            throw new BadRequest(Request.NO_ID, "a request named " + request.id() + " is not answered yet; give this one another name");
        }
        if (waiting.size() >= MOST_WAITING) {
            throw new BadRequest(request.id(), MOST_WAITING + " requests wait already; ask again when they are answered");
        }
        waiting.put(request.id(), request);
        notifyAll();
    }

    private synchronized void cancel(Request request) throws BadRequest {
        List<String> words = request.words();
        if (words.size() != 2) {
            throw new BadRequest(request.id(), "cancel takes the name of one request");
        }
        String other = words.get(1);
        if (waiting.remove(other) != null) {
            replies.exit(other, CANCELLED);
        } else if (running.equals(other)) {
            worker.interrupt();
        } else {
            throw new BadRequest(request.id(), "no request named " + other + " waits or runs; it may be answered already");
        }
        replies.exit(request.id(), 0);
    }

    private synchronized void end() {
        ended = true;
        notifyAll();
        try {
            while (worker.isAlive() && !replies.gone()) {
                wait(100);
            }
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
        }
    }

    private void work() {
        for (Request request = next(); request != null; request = next()) {
            int code = carryOut(request);
            finish(request, code);
        }
    }

    /** The next request; null after the last. */
    private synchronized Request next() {
        try {
            while (waiting.isEmpty()) {
                if (ended) {
                    return null;
                }
                wait();
            }
        } catch (InterruptedException none) {
            return null;
        }
        Request request = waiting.remove(waiting.keySet().iterator().next());
        running = request.id();
        return request;
    }

    private int carryOut(Request request) {
        LinesOut out = new LinesOut(replies, request.id(), Replies.OUT);
        LinesOut err = new LinesOut(replies, request.id(), Replies.ERR);
        int code;
        try (PrintWriter toOut = new PrintWriter(out); PrintWriter toErr = new PrintWriter(err)) {
            code = program.run(toOut, toErr, words -> progress(request.id(), words), request.words().toArray(String[]::new));
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
            replies.line(request.id(), Replies.ERR, "the program itself is at fault: " + fault.toString().replaceAll("\\s+", " "));
            code = FAILED;
        }
        return code;
    }

    private void progress(String id, String words) {
        replies.line(id, Replies.PROGRESS, words.replaceAll("\\s+", " "));
        replies.flush();
    }

    /** An interrupt that comes too late must not meet the next request. */
    private synchronized void finish(Request request, int code) {
        running = "";
        Thread.interrupted();
        replies.exit(request.id(), code);
    }
}
