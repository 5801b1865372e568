package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.IntStream;
import org.garboard.processors.Rows;
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

    /** As a search that is cancelled: it gives up though the pool wipes interrupts out while it shares work. */
    @Test
    void anInterruptEndsWorkThatIsShared() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        FutureTask<Integer> asked = new FutureTask<>(() -> Processors.carryOut(2, () -> {
            while (true) {
                Rows.each(200, (from, to) -> begun.countDown());
            }
        }));
        Thread asking = new Thread(asked);
        asking.start();
        begun.await();
        asking.interrupt();
        ExecutionException ended = assertThrows(ExecutionException.class, () -> asked.get(30, TimeUnit.SECONDS));
        assertInstanceOf(CancellationException.class, ended.getCause());
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
