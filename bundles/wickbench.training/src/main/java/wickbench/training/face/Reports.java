package wickbench.training.face;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import wickbench.api.journal.EntryRef;
import wickbench.api.report.Report;
import wickbench.api.report.Section;
import wickbench.training.Competence;
import wickbench.training.Happening;
import wickbench.training.Matrix;
import wickbench.training.PersonRecord;
import wickbench.training.PersonRecord.RoundScore;
import wickbench.training.book.TrainingWords;

/** The matrix, a person's file and a certificate, as reports. */
final class Reports {
    private final ZoneId zone;
    private final Print print;

    Reports(ZoneId zone) {
        this.zone = zone;
        this.print = new Print(zone);
    }

    Report matrix(Matrix matrix) {
        return new Report(
                TrainingWords.get("report.matrix", matrix.day()),
                List.of(
                        Section.Table.of(Print.matrixHeader(matrix), Print.matrixRows(matrix)),
                        new Section.Paragraph(TrainingWords.get(
                                "terms.shown",
                                matrix.terms().months(),
                                matrix.terms().untestedWeeks(),
                                matrix.terms().remindDays())),
                        new Section.Paragraph(TrainingWords.get("caution"))),
                List.of());
    }

    Report person(PersonRecord record, Names names) {
        List<Section> sections = new ArrayList<>();
        sections.add(new Section.Facts(facts(record, names)));
        sections.add(Section.Table.of(
                Print.competenceHeader(),
                record.competences().stream().map(Print::competenceRow).toList()));
        if (!record.happenings().isEmpty()) {
            sections.add(new Section.Figure(new TimeLine(zone).of(record)));
        }
        if (!record.scores().isEmpty()) {
            sections.add(new Section.Heading(TrainingWords.get("report.rounds")));
            sections.add(Section.Table.of(
                    Print.columns("round", "when", "result", "near", "window"),
                    record.scores().stream().map(this::scoreRow).toList()));
        }
        sections.add(new Section.Heading(TrainingWords.get("report.happenings")));
        sections.add(Section.Table.of(
                Print.happeningHeader(),
                record.happenings().stream().map(print::happeningRow).toList()));
        sections.add(new Section.Paragraph(TrainingWords.get("caution")));
        return new Report(TrainingWords.get("report.person", names.of(record.person())), sections, drawnFrom(record));
    }

    private static List<EntryRef> drawnFrom(PersonRecord record) {
        return record.happenings().stream().map(each -> each.entry().ref()).toList();
    }

    private List<Section.Fact> facts(PersonRecord record, Names names) {
        List<Section.Fact> facts = new ArrayList<>();
        facts.add(new Section.Fact(
                TrainingWords.get("column.person"), names.of(record.person()) + " (" + record.person() + ")"));
        facts.add(new Section.Fact(
                TrainingWords.get("column.sight"),
                record.sight()
                        .map(sight ->
                                TrainingWords.get("vision." + sight.vision().code()) + ", " + print.time(sight.at())
                                        + ", " + sight.how())
                        .orElse(TrainingWords.get("sight.none"))));
        return facts;
    }

    private List<String> scoreRow(RoundScore score) {
        List<String> cells = RoundPrint.scoreRow(score.score());
        return List.of(
                score.round().id(), print.time(score.round().opened()), cells.get(1), cells.get(2), cells.get(6));
    }

    Report certificate(PersonRecord record, Names names, Instant at) {
        List<Competence> held = record.competences().stream()
                .filter(each -> each.state().mayTest())
                .toList();
        List<Section> sections = new ArrayList<>();
        sections.add(new Section.Notice(
                Section.Tone.CALM,
                TrainingWords.get("certificate.word"),
                TrainingWords.get(
                        "certificate.text",
                        names.of(record.person()),
                        record.person(),
                        LocalDate.ofInstant(at, zone))));
        sections.add(Section.Table.of(
                Print.columns("method", "version", "since", "until", "authorised-by", "reason"),
                held.stream().map(each -> certified(each, record, names)).toList()));
        if (!record.scores().isEmpty()) {
            RoundScore last = record.scores().get(record.scores().size() - 1);
            sections.add(new Section.Paragraph(TrainingWords.get(
                    "certificate.round",
                    last.round().id(),
                    print.time(last.round().opened()),
                    RoundPrint.result(last.score()))));
        }
        sections.add(new Section.Facts(facts(record, names)));
        sections.add(new Section.Paragraph(TrainingWords.get("certificate.caution")));
        return new Report(TrainingWords.get("report.certificate"), sections, decisions(held, record));
    }

    private List<String> certified(Competence held, PersonRecord record, Names names) {
        var decision = decision(held, record);
        return List.of(
                held.method().value(),
                held.version().map(String::valueOf).orElse("–"),
                decision.map(each -> print.time(each.at())).orElse(""),
                held.holdsUntil().map(LocalDate::toString).orElse(""),
                decision.map(each -> names.of(each.entry().by()) + ", "
                                + TrainingWords.get(each.signed() ? "signed.yes" : "signed.no"))
                        .orElse(""),
                held.why().orElse(""));
    }

    private static java.util.Optional<Happening> decision(Competence held, PersonRecord record) {
        return record.happenings().stream()
                .filter(each -> held.decided().filter(each.entry().id()::equals).isPresent())
                .findFirst();
    }

    private static List<EntryRef> decisions(List<Competence> held, PersonRecord record) {
        return held.stream()
                .flatMap(each -> decision(each, record).stream())
                .map(each -> each.entry().ref())
                .toList();
    }
}
