package wickbench.demo;

import java.util.Map;
import wickbench.api.json.Json;
import wickbench.api.reading.Outcome;

/** How many strips were recorded, by outcome. */
record Outcomes(int runs, Map<Outcome, Integer> strips) {

    int of(Outcome outcome) {
        return strips.getOrDefault(outcome, 0);
    }

    int all() {
        return strips.values().stream().mapToInt(Integer::intValue).sum();
    }

    Json.Obj json() {
        Json.Obj object = Json.object();
        for (Outcome outcome : Outcome.values()) {
            object = object.with(outcome.code(), of(outcome));
        }
        return object;
    }
}
