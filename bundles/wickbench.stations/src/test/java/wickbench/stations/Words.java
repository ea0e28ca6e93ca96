package wickbench.stations;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import wickbench.api.clash.Decision;
import wickbench.api.index.IndexView;
import wickbench.api.index.Rows;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;

/** A kind of its own: somebody decides by which word a thing goes. */
final class Words implements IndexView {
    private static final String KIND = "word.decided";

    static Draft decided(UUID id, String thing, String word) {
        Json.Obj body = Json.object().with("thing", thing).with("word", word);
        return new Draft(id, new PersonId("op-01"), KIND, 1, body);
    }

    @Override
    public String name() {
        return "words";
    }

    @Override
    public int version() {
        return 1;
    }

    @Override
    public List<String> tables() {
        return List.of("create table word (thing varchar primary key, word varchar not null)");
    }

    @Override
    public Set<String> subjects(Entry entry) {
        return entry.is(KIND, 1) ? Set.of("word:" + text(entry, "thing")) : Set.of();
    }

    @Override
    public Optional<Decision> decision(Entry entry) {
        return entry.is(KIND, 1)
                ? Optional.of(new Decision("word:" + text(entry, "thing"), text(entry, "word")))
                : Optional.empty();
    }

    @Override
    public void forget(String subject, Rows rows) {
        rows.write("delete from word where thing = ?", subject.substring("word:".length()));
    }

    @Override
    public void apply(Entry entry, Rows rows) {
        if (entry.is(KIND, 1)) {
            rows.write("merge into word (thing, word) values (?, ?)", text(entry, "thing"), text(entry, "word"));
        }
    }

    private static String text(Entry entry, String member) {
        return ((Json.Text) entry.body().get(member).orElseThrow()).value();
    }
}
