package wickbench.figures.commands;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickbench.api.command.Terminal;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.progress.Progress;

/** A terminal that keeps what is printed. */
final class Heard implements Terminal {
    final List<String> lines = new ArrayList<>();
    final List<String> notes = new ArrayList<>();
    final List<Json> values = new ArrayList<>();
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
        return Optional.empty();
    }

    @Override
    public PersonId actorOrRefuse() {
        throw new IllegalStateException("a figure asks nobody");
    }

    @Override
    public void line(String text) {
        lines.add(text);
    }

    @Override
    public void note(String text) {
        notes.add(text);
    }

    @Override
    public void json(Json value) {
        values.add(value);
    }

    @Override
    public void table(List<String> header, List<List<String>> rows) {
        lines.add(String.join(" | ", header));
        rows.forEach(row -> lines.add(String.join(" | ", row)));
    }

    @Override
    public Progress progress(String what) {
        return Progress.NONE;
    }
}
