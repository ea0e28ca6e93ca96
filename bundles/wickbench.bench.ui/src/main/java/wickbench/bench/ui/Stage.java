package wickbench.bench.ui;

import wickbench.api.words.Coded;

/** The stages of a run, in their order. */
enum Stage implements Coded {
    NEW,
    PLAN,
    CLOCK,
    READ,
    NEXT;

    String words() {
        return FlowWords.get("stage." + code());
    }
}
