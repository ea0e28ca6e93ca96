package wickbench.report.result;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wickbench.api.gate.Answer;
import wickbench.api.profile.Site;
import wickbench.api.reading.Finding;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Reading;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.Verdict;
import wickbench.api.report.Report;
import wickbench.api.report.Section;
import wickbench.api.report.Section.Tone;
import wickbench.reading.FindingWords;
import wickbench.reading.OutcomeWords;
import wickbench.reading.ReadingWords;
import wickbench.report.ReportWords;
import wickbench.report.text.SiteClock;

/** A single result as a report: what was seen, what follows and why, what was known then, what became of it, and its seal. */
record ResultReport(ResultFile file, Site site, Names names) {

    Report report() {
        RecordedReading now = file.last().reading();
        ReadingParts parts = new ReadingParts(now.reading(), now.method(), clock(), names);
        List<Section> sections = new ArrayList<>();
        corrected(sections);
        sections.add(verdict(now));
        part(sections, "sample", parts.sample());
        strip(sections, now);
        part(sections, "reasons", reasons(now.verdict()));
        owed(sections, now.verdict());
        part(sections, "times", parts.times());
        part(sections, "method", parts.procedure());
        part(sections, "then", answers(now.answers()));
        part(sections, "people", parts.people());
        ResultHistory history = new ResultHistory(file, clock(), names);
        part(sections, "history", history.acts());
        part(sections, "seal", history.seal());
        sections.add(new Section.Paragraph(ReportWords.get("result.verify")));
        return new Report(
                ReportWords.get("result.title", now.reading().sample().code()), sections, history.drawnFrom());
    }

    private static void part(List<Section> sections, String heading, Section section) {
        sections.add(new Section.Heading(ReportWords.get("result." + heading)));
        sections.add(section);
    }

    private void corrected(List<Section> sections) {
        if (file.corrected()) {
            sections.add(new Section.Notice(
                    Tone.NOTICE,
                    ReportWords.get("result.corrected"),
                    ReportWords.get(
                                    "result.corrected.text",
                                    file.first().entry().ref(),
                                    file.last().entry().ref(),
                                    file.last().reason().orElse(""))
                            + new SignatureLine(clock(), names)
                                    .under(file.last().entry())
                                    .map(line -> "\n" + line)
                                    .orElse("")));
        }
    }

    private Section verdict(RecordedReading now) {
        Verdict verdict = now.verdict();
        BigDecimal dilution = now.reading().sample().dilution();
        String text = Stream.of(
                        Stream.of(OutcomeWords.sentence(verdict, dilution)),
                        verdict.level().map(site::shown).map(OutcomeWords::level).stream()
                                .map(level -> ReportWords.get("result.level", level)),
                        verdict.level().flatMap(OutcomeWords::probability).stream())
                .flatMap(lines -> lines)
                .collect(Collectors.joining("\n"));
        return new Section.Notice(tone(verdict), OutcomeWords.text(verdict.outcome(), dilution), text);
    }

    /** An Invalid with a sign of allergen holds as a Positive does, and looks so. */
    private static Tone tone(Verdict verdict) {
        if (verdict.outcome() == Outcome.INVALID) {
            return verdict.sign() ? Tone.ALARM : Tone.CAUTION;
        }
        if (verdict.outcome() == Outcome.POSITIVE_ABOVE_RANGE) {
            return Tone.EXTREME;
        }
        return verdict.outcome().positive() ? Tone.ALARM : Tone.CALM;
    }

    private void strip(List<Section> sections, RecordedReading now) {
        Reading reading = now.reading();
        String reader = names.of(reading.observer().orElse(reading.operator()));
        part(
                sections,
                "strip",
                new Section.StripFigure(
                        ReportWords.get("result.strip.first", reader),
                        reading.strip(),
                        now.method().marks()));
        reading.second()
                .ifPresent(second -> sections.add(new Section.StripFigure(
                        ReportWords.get("result.strip.second", names.of(second.reader())),
                        second.strip(),
                        now.method().marks())));
    }

    private static Section reasons(Verdict verdict) {
        if (verdict.findings().isEmpty()) {
            return new Section.Paragraph(ReportWords.get("result.no-reasons"));
        }
        return Section.Table.of(
                words("table.effect", "table.reason", "table.rule"),
                verdict.findings().stream()
                        .sorted(Comparator.comparing(Finding::severity))
                        .map(finding -> List.of(
                                ReadingWords.text(finding.severity()), FindingWords.text(finding), finding.rule()))
                        .toList());
    }

    private static void owed(List<Section> sections, Verdict verdict) {
        if (!verdict.owed().isEmpty()) {
            part(
                    sections,
                    "owed",
                    new Section.Paragraph(verdict.owed().stream()
                            .sorted()
                            .map(owed -> "— " + ReadingWords.text(owed))
                            .collect(Collectors.joining("\n"))));
        }
    }

    private static Section answers(List<Answer> answers) {
        if (answers.isEmpty()) {
            return new Section.Paragraph(ReportWords.get("result.nobody-asked"));
        }
        return Section.Table.of(
                words("table.neighbour", "table.answer", "table.facts"),
                answers.stream().map(ResultReport::answer).toList());
    }

    private static List<String> answer(Answer answer) {
        if (answer instanceof Answer.Cleared cleared) {
            return List.of(answer.neighbour(), ReportWords.get("answer.cleared"), facts(cleared.facts()));
        }
        if (answer instanceof Answer.Refused refused) {
            String reasons = refused.reasons().stream()
                    .map(reason -> ReportWords.get("answer.reason", reason.code(), reason.measured(), reason.asked()))
                    .collect(Collectors.joining("\n"));
            return List.of(
                    answer.neighbour(),
                    ReportWords.get("answer.refused"),
                    Stream.of(reasons, facts(refused.facts()))
                            .filter(text -> !text.isEmpty())
                            .collect(Collectors.joining("\n")));
        }
        return List.of(answer.neighbour(), ReportWords.get("answer.not-checked"), "");
    }

    private static String facts(Map<String, String> facts) {
        return new TreeMap<>(facts)
                .entrySet().stream()
                        .map(fact -> fact.getKey() + ": " + fact.getValue())
                        .collect(Collectors.joining("\n"));
    }

    private SiteClock clock() {
        return new SiteClock(site.zone());
    }

    private static List<String> words(String... keys) {
        return Stream.of(keys).map(ReportWords::get).toList();
    }
}
