package wickbench.shell;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import wickbench.api.person.PersonId;

/** Who acts at this desk. */
final class Session {
    private final List<Consumer<Optional<PersonId>>> listeners = new CopyOnWriteArrayList<>();
    private Optional<PersonId> actor;

    Session(Optional<PersonId> actor) {
        this.actor = actor;
    }

    Optional<PersonId> actor() {
        return actor;
    }

    void actor(Optional<PersonId> next) {
        if (!next.equals(actor)) {
            actor = next;
            listeners.forEach(listener -> listener.accept(next));
        }
    }

    void onChange(Consumer<Optional<PersonId>> listener) {
        listeners.add(listener);
    }

    void forget(Consumer<Optional<PersonId>> listener) {
        listeners.remove(listener);
    }
}
