package wickbench.bench.ui;

import java.util.List;
import wickbench.api.method.LineRole;
import wickbench.bench.run.Moment;
import wickbench.bench.run.Phase;
import wickbench.bench.run.StripState;
import wickbench.reading.ReadingWords;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.Shape;
import wickbench.widgets.StripDrawing;

/** What is said of a strip before its reader: where it is in time, and what is asked next. */
final class ReadWords {
    private ReadWords() {}

    static Mark mark(StripState strip, Moment now) {
        String words = RunTable.words(strip, now);
        return switch (strip.phase(now)) {
            case OPEN -> new Mark(words, Shape.TRIANGLE, Meaning.ALARM);
            case MISSED -> new Mark(words, Shape.CROSS, Meaning.CAUTION);
            default -> new Mark(words, Shape.RING, Meaning.NEUTRAL);
        };
    }

    static String needed(StripState strip, Phase phase, StripDrawing drawing, SecondReader second) {
        if (!drawing.editable()) {
            return second.asks() ? second.words() : FlowWords.get("read.done." + phase.code());
        }
        List<String> open = strip.strip().unread().strip().format().lines().stream()
                .filter(role -> !drawing.answers().containsKey(role))
                .map((LineRole role) -> ReadingWords.text(role))
                .toList();
        return open.isEmpty() ? FlowWords.get("read.enter") : FlowWords.get("read.open", String.join(", ", open));
    }
}
