package wickbench.tests;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Dictionary;
import java.util.Hashtable;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.osgi.framework.BundleContext;
import org.osgi.framework.InvalidSyntaxException;
import org.osgi.framework.ServiceReference;
import org.osgi.framework.ServiceRegistration;
import wickbench.testing.Hand;
import wickbench.testing.Walked;

/** The window of a started program, opened by its front door on this thread, with a person at it on another. */
record AtTheWindow(DemoHome home) {
    private static final String HAND = "wickbench.testing.ui.WindowHand";
    private static final String FILES = "wickbench.widgets.FileChoice";
    private static final String USABLE = "wickbench.shell.UsableDesktop";
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    /** Opens the window for somebody, lets them do something, and closes it. */
    void sits(String who, Consumer<Hand> person) throws Exception {
        try (WindowLoader loader = new WindowLoader(home.program().set().bundle("wickbench.ledger.ui"))) {
            sits(who, loader, person);
        }
    }

    /** Opens the window for somebody in a language, lets a walker of {@code wickbench.testing.ui} go through it, and closes it. */
    Walked walks(String who, String language, String walker) throws Exception {
        AtomicReference<Walked> walked = new AtomicReference<>();
        try (WindowLoader loader = new WindowLoader(home.program().set().bundle("wickbench.ledger.ui"))) {
            Supplier<?> walk = (Supplier<?>)
                    loader.loadClass(walker).getConstructor(Thread.class).newInstance(Thread.currentThread());
            sits(who, loader, hand -> walked.set((Walked) walk.get()), "--language", language);
        }
        return walked.get();
    }

    private void sits(String who, WindowLoader loader, Consumer<Hand> person, String... options) throws Exception {
        Hand hand = (Hand) loader.loadClass(HAND).getConstructor(Thread.class).newInstance(Thread.currentThread());
        Dictionary<String, Object> first = new Hashtable<>();
        first.put("service.ranking", 1);
        ServiceRegistration<?> files = framework().registerService(FILES, hand, first);
        try {
            sits(who, hand, person, options);
        } finally {
            files.unregister();
        }
    }

    private void sits(String who, Hand hand, Consumer<Hand> person, String... options) throws Exception {
        int before = windows();
        CompletableFuture<Void> done = CompletableFuture.runAsync(() -> {
            awaitAnother(before);
            try {
                person.accept(hand);
            } finally {
                hand.leave();
            }
        });
        List<String> line = new ArrayList<>(List.of("--home", home.folder().toString(), "--as", who));
        line.addAll(List.of(options));
        Answer left = home.program().call(line.toArray(String[]::new));
        done.get();
        assertThat(left.code()).as(left.err()).isZero();
    }

    /** A window says by a service that it can be used. */
    private void awaitAnother(int before) {
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (windows() == before) {
            if (System.nanoTime() > end) {
                throw new AssertionError("no window can be used");
            }
            pause();
        }
    }

    private static void pause() {
        try {
            Thread.sleep(20);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private int windows() {
        try {
            ServiceReference<?>[] usable = framework().getAllServiceReferences(USABLE, null);
            return usable == null ? 0 : usable.length;
        } catch (InvalidSyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    private BundleContext framework() {
        return home.program().set().host().context();
    }
}
