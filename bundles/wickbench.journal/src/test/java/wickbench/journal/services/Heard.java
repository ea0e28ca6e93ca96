package wickbench.journal.services;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickbench.api.command.Terminal;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.progress.Progress;

/** A terminal that remembers what was printed. */
final class Heard implements Terminal {
    final List<String> lines = new ArrayList<>();
    private final boolean json;

    Heard(boolean json) {
        this.json = json;
    }

    @Override
    public boolean json() {
        return json;
    }

    @Override
    public Optional<PersonId> actor() {
        return Optional.of(actorOrRefuse());
    }

    @Override
    public PersonId actorOrRefuse() {
        return new PersonId("rivera");
    }

    @Override
    public void line(String text) {
        lines.add(text);
    }

    @Override
    public void note(String text) {
        lines.add(text);
    }

    @Override
    public void json(Json value) {
        lines.add(value.canonical());
    }

    @Override
    public void table(List<String> header, List<List<String>> rows) {
        lines.add(header + " " + rows);
    }

    @Override
    public Progress progress(String what) {
        return Progress.NONE;
    }
}
