package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(60)
class ProcessorsTest {

    @Test
    void law_onOneProcessorNothingRunsBesideTheCommand() {
        assertEquals(1, Processors.carryOut(1, () -> (int) IntStream.range(0, 10_000).parallel()
            .mapToObj(i -> Thread.currentThread()).distinct().count()));
    }

    @Test
    void whatTheCommandThrowsComesBackAsItWas() {
        for (Throwable fault : new Throwable[] {new IllegalStateException("so"), new StackOverflowError()}) {
            assertSame(fault, assertThrows(fault.getClass(), () -> Processors.carryOut(2, () -> {
                throw ProcessorsTest.<RuntimeException>unchecked(fault);
            })));
        }
    }

    @SuppressWarnings("unchecked")
    private static <T extends Throwable> T unchecked(Throwable fault) throws T {
        throw (T) fault;
    }

    /** As a command that is cancelled while it writes: it ends its work, and its code holds. */
    @Test
    void anInterruptReachesTheCommandAndItsEndIsWaitedFor() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        AtomicBoolean ended = new AtomicBoolean();
        FutureTask<Integer> asked = new FutureTask<>(() -> {
            int code = Processors.carryOut(2, () -> {
                begun.countDown();
                while (!Thread.currentThread().isInterrupted()) {
                    Thread.onSpinWait();
                }
                ended.set(true);
                return 130;
            });
            assertTrue(ended.get() && Thread.currentThread().isInterrupted());
            return code;
        });
        Thread asking = new Thread(asked);
        asking.start();
        begun.await();
        asking.interrupt();
        assertEquals(130, asked.get(30, TimeUnit.SECONDS));
    }
}
