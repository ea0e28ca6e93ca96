package wickbench.shell;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.osgi.service.component.annotations.Component;
import wickbench.api.journal.Entry;
import wickbench.api.journal.JournalListener;

/** Passes on, on whatever thread it comes, that something was recorded here or came in of another station. */
@Component(service = {News.class, JournalListener.class})
public final class News implements JournalListener {
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();

    @Override
    public void appended(List<Entry> entries) {
        listeners.forEach(Runnable::run);
    }

    void onNews(Runnable listener) {
        listeners.add(listener);
    }

    void forget(Runnable listener) {
        listeners.remove(listener);
    }
}
