package wickbench.stations;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wickbench.api.clash.Clash;
import wickbench.api.command.Terminal;
import wickbench.api.index.Index;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Founding;
import wickbench.api.journal.Journal;
import wickbench.api.journal.Sharing;
import wickbench.api.journal.Sighting;
import wickbench.api.journal.StationState;
import wickbench.api.json.Json;
import wickbench.api.words.Words;

/** What there is to say of stations and clashes, for people and for machines. */
final class StationPrint {
    private static final int SHORT_KEY = 12;
    private final Journal journal;
    private final Index index;
    private final Terminal terminal;
    private final Words words = Words.of(StationPrint.class, "stations");

    StationPrint(Journal journal, Index index, Terminal terminal) {
        this.journal = journal;
        this.index = index;
        this.terminal = terminal;
    }

    String words(String key, Object... values) {
        return words.get(key, values);
    }

    void founded(Founding founding) {
        if (terminal.json()) {
            terminal.json(Json.object()
                    .with("station", founding.station().value())
                    .with("zone", founding.zone().getId()));
        } else {
            terminal.line(words.get("founded", founding.station(), founding.zone()));
        }
    }

    void sharing(Sharing sharing) {
        List<Sighting> seen = sharing.stations().isEmpty() ? List.of() : index.sightings();
        if (terminal.json()) {
            terminal.json(json(sharing, seen));
            return;
        }
        terminal.line(
                sharing.share().map(folder -> words.get("share", folder)).orElseGet(() -> words.get("share.none")));
        sharing.cutOff().ifPresent(since -> terminal.line(words.get("share.cut-off", since)));
        if (sharing.share().isPresent()) {
            terminal.line(words.get("share.published", sharing.published()));
        }
        if (!sharing.stations().isEmpty()) {
            terminal.table(
                    header(),
                    sharing.stations().stream().map(state -> row(state, seen)).toList());
        }
        sharing.waits().forEach(terminal::note);
        sharing.notices().forEach(terminal::note);
    }

    private List<String> header() {
        return List.of(
                words.get("column.station"),
                words.get("column.entries"),
                words.get("column.newest"),
                words.get("column.seen"),
                words.get("column.key"),
                words.get("column.state"));
    }

    private List<String> row(StationState state, List<Sighting> seen) {
        return List.of(
                state.station().value(),
                Long.toString(state.size()),
                state.newest().map(Object::toString).orElse(""),
                seen(state, seen),
                state.keyFingerprint().hex().substring(0, SHORT_KEY),
                words.get(state.trouble().isPresent() ? "state.refused" : "state.good"));
    }

    /** Returns what a station has said to have seen, of this one and of each other. */
    private static String seen(StationState state, List<Sighting> seen) {
        return seen.stream()
                .filter(each -> each.station().equals(state.station()))
                .map(each -> each.other() + " " + each.size())
                .collect(Collectors.joining(", "));
    }

    private static Json json(Sharing sharing, List<Sighting> seen) {
        return Json.object()
                .withText("share", sharing.share().map(Object::toString))
                .withText("cut_off", sharing.cutOff().map(Object::toString))
                .with("published", sharing.published())
                .with(
                        "stations",
                        Json.array(sharing.stations().stream()
                                .map(state -> json(state, seen))
                                .toList()))
                .with("waits", Json.texts(sharing.waits()))
                .with("notices", Json.texts(sharing.notices()));
    }

    private static Json json(StationState state, List<Sighting> seen) {
        return Json.object()
                .with("station", state.station().value())
                .with("entries", state.size())
                .withText("newest", state.newest().map(Object::toString))
                .with("key_fingerprint", state.keyFingerprint().hex())
                .with(
                        "seen",
                        Json.array(seen.stream()
                                .filter(each -> each.station().equals(state.station()))
                                .map(each -> (Json) Json.object()
                                        .with("station", each.other().value())
                                        .with("entries", each.size()))
                                .toList()))
                .withText("trouble", state.trouble());
    }

    void clashes(List<Clash> clashes) {
        if (terminal.json()) {
            terminal.json(Json.array(clashes.stream().map(StationPrint::json).toList()));
        } else if (clashes.isEmpty()) {
            terminal.line(words.get("clashes.none"));
        } else {
            terminal.table(
                    clashHeader(),
                    clashes.stream().flatMap(clash -> rows(clash).stream()).toList());
        }
    }

    private List<String> clashHeader() {
        return List.of(
                words.get("column.subject"),
                words.get("column.decision"),
                words.get("column.kind"),
                words.get("column.by"),
                words.get("column.at"));
    }

    private List<List<String>> rows(Clash clash) {
        List<List<String>> rows = new ArrayList<>();
        for (EntryRef ref : clash.decisions()) {
            Optional<Entry> entry = journal.entry(ref);
            rows.add(List.of(
                    clash.subject(),
                    ref.toString(),
                    entry.map(Entry::kind).orElse(""),
                    entry.map(found -> found.by().value()).orElse(""),
                    entry.map(found -> found.at().toString()).orElse("")));
        }
        return rows;
    }

    private static Json json(Clash clash) {
        return Json.object()
                .with("subject", clash.subject())
                .with(
                        "decisions",
                        Json.texts(clash.decisions().stream()
                                .map(EntryRef::toString)
                                .toList()));
    }

    void settled(String subject, String entry) {
        terminal.note(words.get("settled", subject, entry));
    }
}
