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
import wickbench.console.door.Asking;

/** Prints to the streams of one call. */
final class PlainTerminal implements Terminal {
    private final Streams streams;
    private final boolean json;
    private final Optional<PersonId> actor;
    private final Asking asking;
    private final Words words;

    PlainTerminal(Streams streams, GlobalOptions options, Asking asking, Words words) {
        this.streams = streams;
        this.json = options.json();
        this.actor = options.actor();
        this.asking = asking;
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
    public char[] passphrase(String prompt) {
        return asking.secret(prompt)
                .orElseThrow(() ->
                        new BadInput(Complaint.of("--passphrase-stdin", words.get("passphrase.missing", prompt))));
    }

    @Override
    public Progress progress(String what) {
        return new ProgressLine(streams.err(), what);
    }
}
