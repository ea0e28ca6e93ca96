package wickbench.training.ui;

import wickbench.api.words.Coded;

/** The parts of the page. */
enum Tab implements Coded {
    SKILLS,
    ROUNDS,
    DRILL;

    String words() {
        return TrainingUiWords.get("tab." + code());
    }
}
