package wickbench.bench.verify;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import wickbench.api.journal.EntryRef;
import wickbench.api.method.Format;
import wickbench.api.method.Method;
import wickbench.api.method.Method.Step;
import wickbench.api.report.Report;
import wickbench.api.report.Section;
import wickbench.api.report.Section.Fact;
import wickbench.api.report.Section.Tone;
import wickbench.api.words.Decimals;
import wickbench.bench.evidence.Reach;
import wickbench.bench.evidence.Shown;
import wickbench.bench.evidence.Verifications.Verified;
import wickbench.reading.Patterns;
import wickbench.reading.Patterns.Pattern;
import wickbench.reading.ReadingWords;

/** A method as it hangs over the bench: how it is run, what each pattern of the strip says, what to mind, what it was verified for. */
record BenchCard(Method method, List<Verified> verified, List<Shown> shown, List<EntryRef> drawnFrom) {
    Report report() {
        List<Section> sections = new ArrayList<>();
        format(sections);
        strips(sections);
        sections.add(new Section.Facts(facts()));
        sections.add(new Section.Heading(word("steps")));
        sections.add(Section.Table.of(
                List.of(word("column.number"), word("column.step"), word("column.much"), word("column.mind")),
                IntStream.range(0, method.steps().size())
                        .mapToObj(at -> row(at + 1, method.steps().get(at)))
                        .toList()));
        sections.add(new Section.Heading(word("cautions")));
        method.cautions().forEach(text -> sections.add(new Section.Paragraph(text)));
        sections.add(new Section.Paragraph(word("insert-governs")));
        verified(sections);
        return new Report(
                word("title", method.title(), method.ref().id(), method.ref().version()),
                sections,
                Report.Paper.ONE_PAGE,
                drawnFrom);
    }

    private void format(List<Section> sections) {
        if (method.format() == Format.SANDWICH) {
            sections.add(new Section.Notice(Tone.CAUTION, word("caution"), word("two-lines")));
        } else if (method.format() == Format.COMPETITIVE) {
            sections.add(new Section.Notice(Tone.NOTICE, word("notice"), word("competitive")));
        }
    }

    private void strips(List<Section> sections) {
        Patterns.of(method.format(), method.faintTest()).stream()
                .filter(Pattern::plain)
                .forEach(pattern -> sections.add(new Section.StripFigure(
                        ReadingWords.text(pattern.outcome()) + (pattern.sign() ? word("sign") : ""),
                        pattern.strip(),
                        method.marks())));
        sections.add(new Section.Paragraph(word("damaged")));
    }

    private List<Fact> facts() {
        List<Fact> facts = new ArrayList<>();
        Method.Timing timing = method.timing();
        facts.add(fact(
                "kit",
                method.kit()
                        + method.insertRevision()
                                .map(some -> word("insert", some))
                                .orElse("")));
        facts.add(fact(
                "target",
                method.target().name() + ", "
                        + ReadingWords.text(method.target().basis())));
        facts.add(fact(
                "limit",
                method.limit().value() + " " + ReadingWords.text(method.limit().holds())));
        if (!method.target().notSeen().isEmpty()) {
            facts.add(fact("not-seen", String.join("; ", method.target().notSeen())));
        }
        facts.add(fact("route", ReadingWords.text(method.route())));
        facts.add(fact(
                "amounts",
                method.amounts().sample()
                        + method.amounts()
                                .liquid()
                                .map(liquid -> word("in", liquid))
                                .orElse("")));
        facts.add(fact(
                "window",
                word("between", span(timing.develop()), span(timing.develop().plus(timing.window())))));
        timing.warmUp().ifPresent(some -> facts.add(fact("warm-up", word("at-least", span(some)))));
        timing.shake().ifPresent(some -> facts.add(fact("shake", word("at-least", span(some)))));
        timing.extractHold().ifPresent(some -> facts.add(fact("hold", word("at-most", span(some)))));
        method.storage().ifPresent(some -> facts.add(fact("storage", range(some))));
        method.preChecks().forEach(check -> facts.add(new Fact(check.name(), range(check.range()))));
        return facts;
    }

    private void verified(List<Section> sections) {
        sections.add(new Section.Heading(word("verified")));
        List<Verified> standing =
                verified.stream().filter(each -> each.ended().isEmpty()).toList();
        if (standing.isEmpty()) {
            sections.add(new Section.Notice(Tone.CAUTION, word("caution"), word("not-verified")));
        }
        standing.forEach(each -> sections.add(new Section.Paragraph(each.what().what())));
        shown.stream()
                .flatMap(each -> each.reach().stream())
                .forEach(reach -> sections.add(new Section.Notice(tone(reach), word("level"), reach.words())));
    }

    static Tone tone(Reach reach) {
        return switch (reach.tells()) {
            case CAN_TELL -> Tone.NOTICE;
            case CANNOT_TELL, NOT_COMPARABLE -> Tone.CAUTION;
        };
    }

    private static List<String> row(int number, Step step) {
        String much = step.quantity().map(Object::toString).orElse("");
        String lasts = step.lasts().map(BenchCard::span).orElse("");
        String both = much.isEmpty() || lasts.isEmpty() ? much + lasts : much + ", " + lasts;
        return List.of(String.valueOf(number), step.text(), both, step.caution().orElse(""));
    }

    private static Fact fact(String name, String value) {
        return new Fact(word("fact." + name), value);
    }

    private static String range(Method.Range range) {
        return word(
                "between",
                Decimals.of(range.low()),
                Decimals.of(range.high()) + " " + range.unit().symbol());
    }

    /** Returns for example 5 min 30 s. */
    private static String span(Duration span) {
        long minutes = span.toMinutes();
        int seconds = span.toSecondsPart();
        return minutes == 0
                ? word("seconds", seconds)
                : word("minutes", minutes) + (seconds == 0 ? "" : " " + word("seconds", seconds));
    }

    private static String word(String key, Object... values) {
        return VerifyWords.get("card." + key, values);
    }
}
