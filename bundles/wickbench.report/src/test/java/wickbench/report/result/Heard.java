package wickbench.report.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickbench.api.command.Terminal;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.progress.Progress;
import wickbench.report.Plant;

/** A terminal that keeps what is printed. */
final class Heard implements Terminal {
    final List<String> lines = new ArrayList<>();
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
        return Optional.of(Plant.RIVERA);
    }

    @Override
    public PersonId actorOrRefuse() {
        return Plant.RIVERA;
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
        values.add(value);
    }

    @Override
    public void table(List<String> header, List<List<String>> rows) {
        throw new AssertionError("no table was expected");
    }

    @Override
    public Progress progress(String what) {
        return Progress.NONE;
    }
}
