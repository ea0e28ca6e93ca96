package wickbench.console;

import java.util.List;
import java.util.Optional;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.command.Terminal;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.progress.Progress;
import wickbench.api.words.Words;

/** Prints to the streams of one call. */
final class PlainTerminal implements Terminal {
    private final Streams streams;
    private final boolean json;
    private final Optional<PersonId> actor;
    private final Words words;

    PlainTerminal(Streams streams, boolean json, Optional<PersonId> actor, Words words) {
        this.streams = streams;
        this.json = json;
        this.actor = actor;
        this.words = words;
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
        return actor.orElseThrow(() -> new BadInput(Complaint.of("--as", words.get("actor.missing"))));
    }

    @Override
    public void line(String text) {
        streams.out().println(text);
    }

    @Override
    public void note(String text) {
        streams.err().println(text);
    }

    @Override
    public void json(Json value) {
        streams.out().println(value.canonical());
    }

    @Override
    public void table(List<String> header, List<List<String>> rows) {
        TextTable.of(header, rows).forEach(this::line);
    }

    @Override
    public Progress progress(String what) {
        return new ProgressLine(streams.err(), what);
    }
}
