package wickbench.bench.ui;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.authority.Permission;
import wickbench.api.chart.ChartPainter;
import wickbench.api.method.Method;
import wickbench.bench.evidence.Reach;
import wickbench.bench.evidence.Shown;
import wickbench.bench.evidence.Verifications.Verified;
import wickbench.bench.ui.MethodDoors.Known;
import wickbench.shell.PageContext;
import wickbench.widgets.ChartView;
import wickbench.widgets.Fit;
import wickbench.widgets.Mark;
import wickbench.widgets.MarkedLine;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Shape;
import wickbench.widgets.Type;

/** What a method was verified for, with what shows it. */
record EvidenceCard(
        Composite card, PageContext context, Known known, Optional<ChartPainter> painter, Consumer<Verified> end) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("uuuu-MM-dd", Locale.ROOT);

    void fill(Method method, Map<Verified, List<Shown>> all) {
        boolean holds = all.keySet().stream()
                .anyMatch(each -> each.ended().isEmpty() && each.what().method().equals(method.ref()));
        if (!holds) {
            Fit.wide(new Note(card, context.theme(), Meaning.CAUTION, BenchUiWords.get("evidence.none")));
        }
        all.forEach(this::one);
    }

    private void one(Verified verified, List<Shown> shown) {
        boolean holds = verified.ended().isEmpty();
        Mark mark = holds
                ? new Mark(BenchUiWords.get("evidence.holds"), Shape.RING, Meaning.CALM)
                : new Mark(BenchUiWords.get("evidence.ended"), Shape.BAR, Meaning.NEUTRAL);
        String by = BenchUiWords.get(
                "evidence.by",
                verified.what().method().version(),
                known.who(verified.by()),
                DAY.format(verified.at().atZone(known.zone())),
                BenchUiWords.get(verified.signed() ? "evidence.signed" : "card.unsigned"));
        Fit.wide(new MarkedLine(
                card, context.theme(), mark, escaped(verified.what().what()) + "\n" + by));
        verified.what().remark().ifPresent(this::text);
        verified.ended()
                .ifPresent(end -> text(BenchUiWords.get("evidence.because", known.who(end.by()), end.reason())));
        if (holds) {
            shown.forEach(this::shown);
            if (known.rights().verify() instanceof Permission.Allowed) {
                context.theme().controls().button(card, BenchUiWords.get("evidence.end"), () -> end.accept(verified));
            }
        }
    }

    private void shown(Shown shown) {
        context.theme()
                .controls()
                .text(card, Type.STRONG, BenchUiWords.get("evidence.entry", escaped(shown.title()), shown.entry()));
        shown.words().forEach(this::text);
        shown.reach()
                .ifPresent(reach -> Fit.wide(new Note(card, context.theme(), meaning(reach), escaped(reach.words()))));
        shown.plot()
                .ifPresent(
                        plot -> Fit.wide(new ChartView(card, context, painter)).chart(plot));
    }

    private static Meaning meaning(Reach reach) {
        return switch (reach.tells()) {
            case CAN_TELL -> Meaning.NOTICE;
            case CANNOT_TELL, NOT_COMPARABLE -> Meaning.CAUTION;
        };
    }

    private void text(String words) {
        context.theme().controls().text(card, Type.BODY, escaped(words));
    }

    /** A label takes a single ampersand for the sign of a key. */
    private static String escaped(String words) {
        return words.replace("&", "&&");
    }
}
