package wickbench.index;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import wickbench.api.journal.Draft;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;

/** Entries to fill a journal with. */
final class Said {
    static final String KIND = "word.said";
    private static final PersonId RIVERA = new PersonId("rivera");

    private Said() {}

    static Draft one(String word, Optional<Json> amount, SplittableRandom chance) {
        return new Draft(
                Draft.randomId(chance),
                RIVERA,
                KIND,
                1,
                Json.object().with("word", word).withOptional("amount", amount));
    }

    static List<Draft> many(String word, int times) {
        SplittableRandom chance = new SplittableRandom(word.hashCode() + times);
        return IntStream.range(0, times)
                .mapToObj(i -> one(word, Optional.empty(), chance))
                .toList();
    }
}
