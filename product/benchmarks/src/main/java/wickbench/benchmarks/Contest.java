package wickbench.benchmarks;

import java.nio.file.Path;
import java.util.List;

/** One figure, ready to be measured. */
interface Contest {

    /** What is measured, with how many of what. */
    String figure();

    Unit unit();

    int rounds();

    /** How many rounds are run first and do not count, until the compiler has done its work. */
    default int warmUps() {
        return 1;
    }

    /** Makes ours and its baselines ready below an empty folder. */
    Field field(Path folder) throws Exception;

    /** Who runs. */
    record Field(Contestant ours, List<Baseline> baselines) {}
}
