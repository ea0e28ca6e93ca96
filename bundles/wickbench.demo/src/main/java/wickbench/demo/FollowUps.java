package wickbench.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wickbench.api.reading.Owed;
import wickbench.api.reading.ReadingDoor.Kept;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RecordedReading;

/** What people do next because of the verdicts they got. */
final class FollowUps {
    private static final int MOST_TRIES = 2;
    private static final int TEN = 10;
    private static final int HUNDRED = 100;

    private FollowUps() {}

    /** Returns further strips of the same extracts: repeats of invalid ones, dilutions of those that owe them. */
    static List<Task> strips(Run run, List<Kept> kept) {
        return samples(run, kept).flatMap(FollowUps::strips).toList();
    }

    /** Returns the samples because of which the line is cleaned and sampled again. */
    static List<Task> positives(Run run, List<Kept> kept) {
        return samples(run, kept)
                .filter(tested -> tested.recorded().verdict().outcome().positive())
                .map(Tested::task)
                .filter(task -> task.reason() != Reason.BEFORE_CLEANING)
                .filter(task -> task.point().isPresent())
                .toList();
    }

    private record Tested(Task task, RecordedReading recorded) {}

    private static Stream<Tested> samples(Run run, List<Kept> kept) {
        return IntStream.range(0, kept.size())
                .mapToObj(i -> new Tested(run.tasks().get(i), kept.get(i).reading()))
                .filter(tested -> tested.task().control().isEmpty());
    }

    private static Stream<Task> strips(Tested tested) {
        Task task = tested.task();
        Set<Owed> owed = tested.recorded().verdict().owed();
        var extracted = tested.recorded().reading().times().extracted();
        List<Task> more = new ArrayList<>();
        if (owed.contains(Owed.REPEAT) && task.tries() < MOST_TRIES) {
            more.add(task.again(task.thinned(), extracted));
        }
        boolean dilute = owed.contains(Owed.BRACKET) || owed.contains(Owed.REPEAT_DILUTED);
        if (dilute && task.thinned() == 1) {
            more.add(task.again(TEN, extracted));
            more.add(task.again(HUNDRED, extracted));
        }
        return more.stream();
    }
}
