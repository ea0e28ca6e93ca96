package wickbench.plant.clean;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.reading.Visual;
import wickbench.plant.entry.Taking;

/**
 * One clean of a series; the body of {@code validation.ran}. Whether it passed follows from what its readings stand by.
 *
 * @param visual what the eye said, before anything was sampled
 * @param readings what was read at the series' points after it; none after a look that found it soiled
 * @param at when the clean had ended
 */
public record SeriesRun(String clean, Visual visual, List<UUID> readings, Instant at) {
    public static final String KIND = "validation.ran";

    public SeriesRun {
        readings = List.copyOf(readings);
    }

    public Json.Obj body() {
        return Json.object()
                .with("clean", clean)
                .with("visual", visual.code())
                .with(
                        "readings",
                        Json.texts(readings.stream().map(UUID::toString).toList()))
                .with("at", at.toString());
    }

    /** Reads a body. */
    public static Checked<SeriesRun> read(Fields fields) {
        Taking taking = Taking.body(fields);
        String clean = fields.text("clean");
        Optional<Visual> visual = taking.choice("visual", Visual.class);
        List<UUID> readings = taking.ids("readings");
        Optional<Instant> at = taking.instant("at");
        return fields.finish(() -> new SeriesRun(clean, visual.orElseThrow(), readings, at.orElseThrow()));
    }
}
