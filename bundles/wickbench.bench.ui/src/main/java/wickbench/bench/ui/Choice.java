package wickbench.bench.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.eclipse.swt.widgets.Combo;
import wickbench.api.words.Coded;
import wickbench.reading.ReadingWords;

/** A closed list of codes behind their words, the first of which says that nothing is stated. */
record Choice(Combo combo, List<? extends Coded> codes) {
    static List<String> words(List<? extends Coded> codes) {
        List<String> words = new ArrayList<>();
        words.add(BenchUiWords.get("choice.none"));
        codes.forEach(code -> words.add(ReadingWords.text(code)));
        return words;
    }

    Supplier<String> reader() {
        return () -> combo.getSelectionIndex() <= 0
                ? ""
                : codes.get(combo.getSelectionIndex() - 1).code();
    }

    void put(String code) {
        combo.select(0);
        for (int i = 0; i < codes.size(); i++) {
            if (codes.get(i).code().equals(code)) {
                combo.select(i + 1);
            }
        }
    }
}
