package wickbench.bench.ui;

import wickbench.api.words.Coded;
import wickbench.bench.run.Moment;
import wickbench.bench.run.RunState;

/** The stages of a run, in their order. */
enum Stage implements Coded {
    NEW,
    PLAN,
    CLOCK,
    READ,
    NEXT;

    /** Returns where a run under way goes on: at the clock, or with what is owed once every strip is over. */
    static Stage of(RunState run, Moment now) {
        return run.over(now) ? NEXT : CLOCK;
    }

    String words() {
        return FlowWords.get("stage." + code());
    }
}
