package wickbench.bench.run;

import java.util.List;
import org.osgi.annotation.versioning.ConsumerType;

/** Hears of a run, on threads of the run: never slow, and never a window at once. */
@ConsumerType
public interface RunListener {

    /** Something has happened, and stands on the disk. */
    void changed(RunState run);

    /** These ring now, what closes first first. */
    void ring(List<Alarm> alarms);
}
