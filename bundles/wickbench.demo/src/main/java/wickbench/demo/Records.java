package wickbench.demo;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.BiConsumer;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Reading;
import wickbench.api.reading.ReadingDoor;
import wickbench.api.reading.ReadingDoor.Kept;
import wickbench.api.reading.RecordedReading;

/** Takes worked runs through the door, and counts what came of them. */
final class Records {
    private final ReadingDoor door;
    private final Story story;
    private final Map<Outcome, Integer> outcomes = new EnumMap<>(Outcome.class);
    private final List<Chapter> others = new ArrayList<>();
    private final List<BiConsumer<UUID, RecordedReading>> witnesses = new ArrayList<>();
    private int runs;

    Records(ReadingDoor door, Story story) {
        this.door = door;
        this.story = story;
    }

    /** Lets one more chapter hear of every strip of a run. */
    void also(Chapter chapter) {
        others.add(chapter);
    }

    /** Lets somebody hear of every strip, of a run or not, with the id of its entry. */
    void witness(BiConsumer<UUID, RecordedReading> other) {
        witnesses.add(other);
    }

    List<Kept> record(Bench.Worked worked) {
        List<Kept> kept = door.record(worked.readings(), worked.run().crew().operator());
        for (Kept each : kept) {
            story.hear(each.reading());
            others.forEach(chapter -> chapter.hear(each.id(), each.reading()));
        }
        count(kept);
        runs++;
        return kept;
    }

    /** Records strips that belong to no run, such as those that check a lot. */
    List<Kept> check(List<Reading> strips, PersonId operator) {
        List<Kept> kept = door.record(strips, operator);
        count(kept);
        return kept;
    }

    private void count(List<Kept> kept) {
        kept.forEach(each -> witnesses.forEach(other -> other.accept(each.id(), each.reading())));
        kept.forEach(each -> outcomes.merge(each.reading().verdict().outcome(), 1, Integer::sum));
    }

    Outcomes outcomes() {
        return new Outcomes(runs, new EnumMap<>(outcomes));
    }
}
