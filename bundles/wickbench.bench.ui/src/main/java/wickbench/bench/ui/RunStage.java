package wickbench.bench.ui;

import org.eclipse.swt.widgets.Composite;
import wickbench.bench.run.Moment;

/** One stage of a run on the page. */
interface RunStage {
    Composite control();

    /** Has come to the front: puts the focus where work goes on. */
    void shown();

    /** Time has passed, or something has happened. */
    void tick(Moment now);
}
