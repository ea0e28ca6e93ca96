package wickbench.training.face;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickbench.api.journal.Entry;
import wickbench.api.report.Report;
import wickbench.api.report.Section;
import wickbench.training.Agreement;
import wickbench.training.Call;
import wickbench.training.Round;
import wickbench.training.RoundKey;
import wickbench.training.Truth;
import wickbench.training.book.TrainingWords;

/** One round as a report: what was asked, what was called, what it came to. */
final class RoundReport {
    private final Print print;

    RoundReport(ZoneId zone) {
        this.print = new Print(zone);
    }

    Report of(Round round, Optional<Agreement> agreement, Map<String, Truth> truth) {
        List<Section> sections = new ArrayList<>();
        sections.add(new Section.Paragraph(String.join("\n", RoundPrint.head(round))));
        sections.add(new Section.Facts(facts(round)));
        if (!round.scores().isEmpty()) {
            sections.add(new Section.Heading(TrainingWords.get("report.scores")));
            sections.add(Section.Table.of(
                    RoundPrint.scoreHeader(),
                    round.scores().stream().map(RoundPrint::scoreRow).toList()));
            sections.add(new Section.Figure(RoundCharts.shares(round)));
        }
        agreement.ifPresent(
                found -> sections.add(new Section.Paragraph(String.join("\n", RoundPrint.agreement(found)))));
        round.key().ifPresent(opened -> {
            sections.add(new Section.Figure(RoundCharts.calls(round, opened.key(), truth)));
            ContrastChart.of(round, opened.key()).map(Section.Figure::new).ifPresent(sections::add);
            sections.add(new Section.Heading(TrainingWords.get("report.calls")));
            sections.add(calls(round, opened.key(), truth));
        });
        sections.add(new Section.Figure(RoundCharts.odds(round.plan().design())));
        sections.add(new Section.Paragraph(TrainingWords.get("odds.skills")));
        sections.add(new Section.Paragraph(TrainingWords.get("caution")));
        return new Report(
                TrainingWords.get("report.round", round.id()),
                sections,
                round.entries().stream().map(Entry::ref).toList());
    }

    private List<Section.Fact> facts(Round round) {
        List<Section.Fact> facts = new ArrayList<>(List.of(
                new Section.Fact(
                        TrainingWords.get("column.opened"), print.time(round.opened()) + ", " + round.openedBy()),
                new Section.Fact(
                        TrainingWords.get("column.key-by"), round.plan().keyMaker()),
                new Section.Fact(
                        TrainingWords.get("column.readers"),
                        String.join(", ", ids(round.plan().readers())))));
        if (!round.plan().experts().isEmpty()) {
            facts.add(new Section.Fact(
                    TrainingWords.get("column.experts"),
                    String.join(", ", ids(round.plan().experts()))));
        }
        return facts;
    }

    private static List<String> ids(List<?> people) {
        return people.stream().map(Object::toString).toList();
    }

    private static Section calls(Round round, RoundKey key, Map<String, Truth> truth) {
        List<String> header = new ArrayList<>(Print.columns("code", "class"));
        round.plan().callers().forEach(person -> header.add(person.value()));
        List<List<String>> rows = RoundCharts.inOrder(key).stream()
                .map(strip -> {
                    List<String> row = new ArrayList<>(List.of(
                            strip.code(),
                            TrainingWords.get("class." + strip.kind().code())));
                    round.plan()
                            .callers()
                            .forEach(person -> row.add(round.callsOf(person).stream()
                                    .filter(call -> call.code().equals(strip.code()))
                                    .findFirst()
                                    .map(call -> called(call, Optional.ofNullable(truth.get(call.code()))))
                                    .orElse("–")));
                    return List.copyOf(row);
                })
                .toList();
        return Section.Table.of(header, rows);
    }

    private static String called(Call call, Optional<Truth> truth) {
        String word = TrainingWords.get("outcome." + call.outcome().code())
                + call.elapsed().map(time -> " " + time.toSeconds() + " s").orElse("");
        boolean wrong = truth.filter(each -> !each.right(call.outcome())).isPresent();
        return wrong ? TrainingWords.get("call.wrong", word) : word;
    }
}
