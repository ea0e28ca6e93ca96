package wickbench.ledger.services;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickbench.api.command.Terminal;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.progress.Progress;

/** A terminal that keeps what is printed. */
record Lines(boolean json, List<String> out, List<String> err) implements Terminal {
    Lines(boolean json) {
        this(json, new ArrayList<>(), new ArrayList<>());
    }

    @Override
    public Optional<PersonId> actor() {
        return Optional.of(TestSite.WRITER);
    }

    @Override
    public PersonId actorOrRefuse() {
        return TestSite.WRITER;
    }

    @Override
    public void line(String text) {
        out.add(text);
    }

    @Override
    public void note(String text) {
        err.add(text);
    }

    @Override
    public void json(Json value) {
        out.add(value.canonical());
    }

    @Override
    public void table(List<String> header, List<List<String>> rows) {
        out.add(String.join(" | ", header));
        rows.forEach(row -> out.add(String.join(" | ", row)));
    }

    @Override
    public Progress progress(String what) {
        return Progress.NONE;
    }
}
