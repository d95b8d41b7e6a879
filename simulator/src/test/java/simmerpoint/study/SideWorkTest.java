package simmerpoint.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.SideWork;

class SideWorkTest {
    @Test
    void aloneItWorksOnTheCallersThread() {
        try (SideWork<Thread> work = new SideWork<>(false, progress -> Thread.currentThread())) {
            assertSame(Thread.currentThread(), work.result());
        }
    }

    @Test
    void besideItBeginsBeforeItsResultIsAskedFor() throws InterruptedException {
        CountDownLatch begun = new CountDownLatch(1);
        try (SideWork<Thread> work = new SideWork<>(true, progress -> {
            begun.countDown();
            return Thread.currentThread();
        })) {
            assertTrue(begun.await(1, TimeUnit.MINUTES));
            assertNotSame(Thread.currentThread(), work.result());
        }
    }

    @Test
    void tellsWhatWentWrong() {
        ImpossibleSetupException wrong = new ImpossibleSetupException("no room");
        try (SideWork<Integer> work = new SideWork<>(true, progress -> {
            throw wrong;
        })) {
            assertSame(wrong, assertThrows(ImpossibleSetupException.class, work::result));
        }
    }

    @Test
    void closingStopsIt() throws InterruptedException {
        CountDownLatch begun = new CountDownLatch(1);
        SideWork<Integer> work = new SideWork<>(true, progress -> {
            begun.countDown();
            while (progress.report(0, "")) {
                Thread.onSpinWait();
            }
            return 7;
        });
        assertTrue(begun.await(1, TimeUnit.MINUTES));
        work.close();
        assertEquals(7, work.result());
    }
}
