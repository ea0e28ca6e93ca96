package wickbench.demo;

import java.util.List;
import wickbench.api.json.Json;
import wickbench.api.words.Words;

/**
 * What a chapter came to, in numbers counted in the records.
 *
 * @param chapter its code, also the key of its sentence
 * @param counts in the order in which the sentence uses them
 */
record Told(String chapter, List<Count> counts) {

    record Count(String name, long value) {}

    String sentence(Words words) {
        return words.get("chapter." + chapter, counts.stream().map(Count::value).toArray());
    }

    Json.Obj json() {
        Json.Obj object = Json.object().with("chapter", chapter);
        for (Count count : counts) {
            object = object.with(count.name(), count.value());
        }
        return object;
    }
}
