package wickbench.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import org.eclipse.swt.widgets.Label;
import org.junit.jupiter.api.Test;
import wickbench.api.check.Refusal;
import wickbench.widgets.Job;

class PageJobsTest {

    @Test
    void worksElsewhereAndDeliversOnTheUiThread() {
        AtomicReference<Thread> worked = new AtomicReference<>();
        AtomicReference<Thread> delivered = new AtomicReference<>();
        try (OpenDesk desk = desk((label, context) -> context.jobs()
                .run(
                        "work",
                        progress -> {
                            worked.set(Thread.currentThread());
                            return 7;
                        },
                        seven -> delivered.set(Thread.currentThread())))) {
            desk.await(() -> delivered.get() != null);
            assertThat(delivered.get()).isSameAs(Thread.currentThread()).isNotSameAs(worked.get());
        }
    }

    @Test
    void neverDeliversToAPageThatIsClosed() throws InterruptedException {
        CountDownLatch go = new CountDownLatch(1);
        CountDownLatch worked = new CountDownLatch(1);
        AtomicBoolean delivered = new AtomicBoolean();
        Places places = new Places();
        PlainPage page = new PlainPage(
                "&Bench",
                (label, context) -> context.jobs()
                        .run(
                                "work",
                                progress -> {
                                    go.await();
                                    worked.countDown();
                                    return "late";
                                },
                                text -> {
                                    delivered.set(true);
                                    label.setText(text);
                                }));
        Offer.add(places, "bench", page);
        try (OpenDesk desk = new OpenDesk(places)) {
            places.remove(new Offer(page));
            desk.settle();
            go.countDown();
            assertThat(worked.await(10, TimeUnit.SECONDS)).isTrue();
            boolean[] passed = {false};
            desk.window().shell().getDisplay().timerExec(300, () -> passed[0] = true);
            desk.await(() -> passed[0]);
            assertThat(delivered).isFalse();
        }
    }

    @Test
    void tellsTheWorkThatItWasCancelledAndDeliversNothing() throws InterruptedException {
        CountDownLatch stopped = new CountDownLatch(1);
        AtomicBoolean delivered = new AtomicBoolean();
        AtomicReference<Job> job = new AtomicReference<>();
        try (OpenDesk desk = desk((label, context) -> job.set(context.jobs()
                .run(
                        "work",
                        progress -> {
                            long n = 0;
                            while (progress.at(n, n + 1)) {
                                n++;
                            }
                            stopped.countDown();
                            return n;
                        },
                        n -> delivered.set(true))))) {
            job.get().cancel();
            assertThat(stopped.await(10, TimeUnit.SECONDS)).isTrue();
            desk.settle();
            assertThat(job.get().running()).isFalse();
            assertThat(delivered).isFalse();
        }
    }

    @Test
    void showsAFailureInPlaceOfThePageInItsOwnWords() {
        try (OpenDesk desk = desk((label, context) -> context.jobs()
                .run(
                        "work",
                        progress -> {
                            throw new Refusal("home.held", "another program holds the home");
                        },
                        nothing -> {}))) {
            desk.await(() -> desk.front().failure().isPresent());
            assertThat(desk.front().failure()).contains("another program holds the home");
        }
    }

    @Test
    void closesPagesWithTheWindowAndLetsWorkComeToItsSafePoint() {
        CountDownLatch begun = new CountDownLatch(1);
        AtomicReference<String> end = new AtomicReference<>("never");
        PlainPage page = new PlainPage(
                "&Bench",
                (label, context) -> context.jobs()
                        .run(
                                "work",
                                progress -> {
                                    begun.countDown();
                                    while (progress.at(0, 1)) {
                                        Thread.onSpinWait();
                                    }
                                    end.set(Thread.currentThread().isInterrupted() ? "interrupted" : "safe");
                                    return 0;
                                },
                                n -> {}));
        Places places = new Places();
        Offer.add(places, "bench", page);
        try (OpenDesk desk = new OpenDesk(places)) {
            desk.await(() -> begun.getCount() == 0);
        }
        assertThat(page.heard()).endsWith("closed");
        assertThat(end.get()).isEqualTo("safe");
    }

    @Test
    void showsAnErrorOfTheMachineToo() {
        try (OpenDesk desk = desk((label, context) -> context.jobs()
                .run(
                        "work",
                        progress -> {
                            throw new OutOfMemoryError("a test says so");
                        },
                        nothing -> {}))) {
            desk.await(() -> desk.front().failure().isPresent());
            assertThat(desk.front().failure().orElseThrow()).contains("a test says so");
        }
    }

    private static OpenDesk desk(java.util.function.BiConsumer<Label, PageContext> onOpen) {
        Places places = new Places();
        Offer.add(places, "bench", new PlainPage("&Bench", onOpen));
        return new OpenDesk(places);
    }
}
