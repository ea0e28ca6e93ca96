package wickbench.demo;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.ReadingDoor;
import wickbench.api.reading.ReadingDoor.Kept;

/** Takes worked runs through the door, and counts what came of them. */
final class Records {
    private final ReadingDoor door;
    private final Story story;
    private final Map<Outcome, Integer> outcomes = new EnumMap<>(Outcome.class);
    private int runs;

    Records(ReadingDoor door, Story story) {
        this.door = door;
        this.story = story;
    }

    List<Kept> record(Bench.Worked worked) {
        List<Kept> kept = door.record(worked.readings(), worked.run().crew().operator());
        for (Kept each : kept) {
            story.hear(each.reading());
            outcomes.merge(each.reading().verdict().outcome(), 1, Integer::sum);
        }
        runs++;
        return kept;
    }

    Outcomes outcomes() {
        return new Outcomes(runs, new EnumMap<>(outcomes));
    }
}
