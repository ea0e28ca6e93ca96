package wickbench.index;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wickbench.api.index.IndexView;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.json.Json;

/** A view in miniature: counts entries by their word, keeps the newest amount, and cannot take the word it chokes on. */
record Tallies(String name, int version, Optional<String> chokesOn) implements IndexView {

    static Tallies named(String name) {
        return new Tallies(name, 1, Optional.empty());
    }

    @Override
    public List<String> tables() {
        return List.of(
                "create table tally (word varchar(20) primary key, times bigint not null, amount decimal(15, 3),"
                        + " newest timestamp(3) with time zone not null)",
                "create index by_times on tally (times, word)");
    }

    @Override
    public Set<String> subjects(Entry entry) {
        return entry.is(Said.KIND, 1) ? Set.of(word(entry)) : Set.of();
    }

    @Override
    public void forget(String subject, Rows rows) {
        rows.write("delete from tally where word = ?", subject);
    }

    private static String word(Entry entry) {
        return ((Json.Text) entry.body().get("word").orElseThrow()).value();
    }

    @Override
    public void apply(Entry entry, Rows rows) {
        if (!entry.is(Said.KIND, 1)) {
            return;
        }
        String word = word(entry);
        if (chokesOn.filter(word::equals).isPresent()) {
            // after a first statement, so that a roll-back has something to undo
            rows.write("delete from tally");
            throw new IllegalStateException("cannot swallow " + word);
        }
        Optional<BigDecimal> amount = entry.body().get("amount").map(value -> ((Json.Num) value).value());
        int known = rows.write(
                "update tally set times = times + 1, amount = ?, newest = ? where word = ?", amount, entry.at(), word);
        if (known == 0) {
            rows.write("insert into tally (word, times, amount, newest) values (?, 1, ?, ?)", word, amount, entry.at());
        }
    }

    long times(H2Index index, String word) {
        return index.read(
                name,
                rows -> rows.first("select times from tally where word = ?", row -> row.whole("times"), word)
                        .orElse(0L));
    }
}
