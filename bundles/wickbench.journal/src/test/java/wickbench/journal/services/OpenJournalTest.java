package wickbench.journal.services;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;
import org.osgi.framework.ServiceRegistration;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.journal.JournalListener;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.journal.JournalFolder;

/** The one journal of a program: opened once, heard of by whoever is there, and let go of for good. */
class OpenJournalTest {
    @TempDir
    Path folder;

    /** What the framework was told and asked. */
    private final List<String> framework = new ArrayList<>();

    private final Map<ServiceReference<?>, Object> services = new HashMap<>();

    @SuppressWarnings("unchecked")
    private static <T> T played(Class<?> type, java.lang.reflect.InvocationHandler by) {
        return (T) Proxy.newProxyInstance(OpenJournalTest.class.getClassLoader(), new Class<?>[] {type}, by);
    }

    /** The framework itself, as far as the journal asks it; our own parts are real. */
    private BundleContext context() {
        ServiceRegistration<?> registration = played(ServiceRegistration.class, (self, asked, values) -> {
            framework.add(asked.getName());
            return null;
        });
        return played(BundleContext.class, (self, asked, values) -> {
            framework.add(asked.getName());
            return switch (asked.getName()) {
                case "getService" -> services.get(values[0]);
                case "ungetService" -> true;
                default -> registration;
            };
        });
    }

    private static <T> ServiceReference<T> reference() {
        int[] key = {0};
        return played(ServiceReference.class, (self, asked, values) -> switch (asked.getName()) {
            case "hashCode" -> System.identityHashCode(key);
            case "equals" -> self == values[0];
            default -> null;
        });
    }

    private static void record(JournalFolder journal, int number) {
        journal.append(List.of(new Draft(
                new UUID(1, number),
                new PersonId("rivera"),
                "note.written",
                1,
                Json.object().with("n", number))));
    }

    @Test
    void the_home_is_opened_once_and_never_again_after_the_end() {
        OpenJournal open = new OpenJournal(context(), new HomeFolder(folder));
        JournalFolder journal = open.journal();
        assertThat(open.journal()).isSameAs(journal);
        assertThat(framework).containsExactly("registerService");
        open.close();
        assertThat(framework).containsExactly("registerService", "unregister");
        assertThatThrownBy(open::journal).isInstanceOf(IllegalStateException.class);
        try (JournalFolder next = JournalFolder.open(new HomeFolder(folder), entries -> {})) {
            assertThat(next.founding()).isEmpty();
        }
    }

    @Test
    void whoever_listens_hears_of_entries_and_whoever_left_does_not() {
        OpenJournal open = new OpenJournal(context(), new HomeFolder(folder));
        List<Entry> heard = new ArrayList<>();
        ServiceReference<JournalListener> there = reference();
        ServiceReference<JournalListener> gone = reference();
        services.put(there, (JournalListener) heard::addAll);
        open.listen(there);
        open.listen(gone);
        record(open.journal(), 1);
        assertThat(heard).extracting(Entry::kind).containsExactly("station.founded", "note.written");
        assertThat(framework).filteredOn("ungetService"::equals).hasSize(1);
        assertThat(open.journal().status().notices()).isEmpty();
        open.unlisten(there);
        record(open.journal(), 2);
        assertThat(heard).hasSize(2);
        open.close();
    }
}
