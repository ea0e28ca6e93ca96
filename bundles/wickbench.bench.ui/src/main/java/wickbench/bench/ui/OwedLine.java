package wickbench.bench.ui;

import java.util.ArrayList;
import java.util.List;
import wickbench.api.owed.OwedItem;
import wickbench.api.owed.Step;
import wickbench.api.reading.RunControl;
import wickbench.api.words.Coded;
import wickbench.reading.ReadingWords;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.Shape;

/** Something owed in one line: a mark, and in words what, of which tube, where, and what of it is missing. */
final class OwedLine {
    private OwedLine() {}

    static Mark mark(OwedDue owed) {
        Step step = owed.item().step();
        boolean grave = step == Step.HOLD || step == Step.DECIDE || owed.item().callQuality();
        return grave
                ? new Mark("", Shape.TRIANGLE, Meaning.ALARM)
                : new Mark("", Shape.SQUARE, owed.byStrip() ? Meaning.NOTICE : Meaning.CAUTION);
    }

    static String words(OwedDue owed) {
        OwedItem item = owed.item();
        List<String> words = new ArrayList<>();
        words.add(what(item));
        words.add(item.sample());
        words.add(item.place());
        words.add(more(owed));
        return String.join(
                " \u00b7 ", words.stream().filter(word -> !word.isBlank()).toList());
    }

    static String what(OwedItem item) {
        return FlowWords.get("owed." + item.step().code());
    }

    private static String more(OwedDue owed) {
        OwedItem item = owed.item();
        List<String> more = new ArrayList<>();
        switch (item.step()) {
            case REPEAT_DILUTED, BRACKET -> item.missing().forEach(times -> more.add("\u00d7" + times));
            case DECIDE -> item.missing().stream().map(ReadingWords::doubt).forEach(more::add);
            case RUN_CONTROL -> controls(item, more);
            default ->
                item.missing().stream()
                        .filter(place -> !place.equals(item.place()))
                        .forEach(more::add);
        }
        if (item.step() == Step.RE_TEST && !item.neighboursNamed()) {
            more.add(FlowWords.get("owed.neighbours"));
        }
        if (item.step() == Step.RE_TEST && owed.unclean()) {
            more.add(FlowWords.get("owed.unclean"));
        }
        if (item.callQuality()) {
            more.add(FlowWords.get("owed.quality"));
        }
        return String.join(", ", more);
    }

    private static void controls(OwedItem item, List<String> more) {
        item.missing().stream()
                .map(code -> ReadingWords.text(Coded.of(RunControl.class, code)))
                .forEach(more::add);
        item.method().map(Object::toString).ifPresent(more::add);
    }
}
