package wickbench.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickbench.api.command.Terminal;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.progress.Progress;

/** A terminal that keeps what is printed. */
final class Paper implements Terminal {
    private final boolean json;
    private final List<String> printed = new ArrayList<>();

    Paper(boolean json) {
        this.json = json;
    }

    List<String> printed() {
        return printed;
    }

    @Override
    public boolean json() {
        return json;
    }

    @Override
    public Optional<PersonId> actor() {
        return Optional.empty();
    }

    @Override
    public PersonId actorOrRefuse() {
        throw new AssertionError("nobody acts here but the plant's own people");
    }

    @Override
    public void line(String text) {
        printed.add(text);
    }

    @Override
    public void note(String text) {
        printed.add(text);
    }

    @Override
    public void json(Json value) {
        printed.add(value.canonical());
    }

    @Override
    public void table(List<String> header, List<List<String>> rows) {
        printed.add(String.join(" | ", header));
        rows.forEach(row -> printed.add(String.join(" | ", row)));
    }

    @Override
    public Progress progress(String what) {
        return Progress.NONE;
    }
}
