package wickbench.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickbench.api.command.Terminal;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.progress.Progress;

/** A terminal that keeps what is printed. */
public final class HeardTerminal implements Terminal {
    private final boolean json;
    private final Optional<PersonId> actor;
    private final List<String> printed = new ArrayList<>();
    private final List<String> lines = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private final List<Json> values = new ArrayList<>();

    private HeardTerminal(boolean json, Optional<PersonId> actor) {
        this.json = json;
        this.actor = actor;
    }

    /** Returns a terminal at which nobody has said who they are. */
    public static HeardTerminal ofNobody(boolean json) {
        return new HeardTerminal(json, Optional.empty());
    }

    public static HeardTerminal of(PersonId actor, boolean json) {
        return new HeardTerminal(json, Optional.of(actor));
    }

    /** Returns all that was printed, in order, a value as its one line. */
    public List<String> printed() {
        return printed;
    }

    /** Returns what people read on standard output; the cells of a row stand between bars. */
    public List<String> lines() {
        return lines;
    }

    /** Returns what went to standard error. */
    public List<String> notes() {
        return notes;
    }

    /** Returns what machines read. */
    public List<Json> values() {
        return values;
    }

    @Override
    public boolean json() {
        return json;
    }

    @Override
    public Optional<PersonId> actor() {
        return actor;
    }

    @Override
    public PersonId actorOrRefuse() {
        return actor.orElseThrow(() -> new AssertionError("nobody was to be asked for here"));
    }

    @Override
    public void line(String text) {
        lines.add(text);
        printed.add(text);
    }

    @Override
    public void note(String text) {
        notes.add(text);
        printed.add(text);
    }

    @Override
    public void json(Json value) {
        values.add(value);
        printed.add(value.canonical());
    }

    @Override
    public void table(List<String> header, List<List<String>> rows) {
        line(String.join(" | ", header));
        rows.forEach(row -> line(String.join(" | ", row)));
    }

    @Override
    public Progress progress(String what) {
        return Progress.NONE;
    }
}
