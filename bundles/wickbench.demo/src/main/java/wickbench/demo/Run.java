package wickbench.demo;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * The strips that one operator runs together.
 *
 * @param begins when the first sample is extracted
 * @param batch what is made next
 */
record Run(Plant.Line line, Instant begins, Crew crew, Optional<String> batch, List<Task> tasks) {

    /** Returns a later run of the same crew on the same line. */
    Run followedBy(Instant begins, List<Task> tasks) {
        return new Run(line, begins, crew, batch, tasks);
    }
}
