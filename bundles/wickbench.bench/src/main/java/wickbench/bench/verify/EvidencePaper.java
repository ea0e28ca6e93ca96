package wickbench.bench.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import wickbench.api.journal.EntryRef;
import wickbench.api.method.Method;
import wickbench.api.report.Report;
import wickbench.api.report.Section;
import wickbench.bench.evidence.Shown;
import wickbench.bench.evidence.Verifications.Verified;

/** All that shows that a method works here, with its words and plots. */
record EvidencePaper(Method method, Map<Verified, List<Shown>> all) {
    Report report() {
        List<Section> sections = new ArrayList<>();
        List<EntryRef> drawnFrom = new ArrayList<>();
        if (all.isEmpty()) {
            sections.add(new Section.Notice(
                    Section.Tone.CAUTION, VerifyWords.get("card.caution"), VerifyWords.get("card.not-verified")));
        }
        all.forEach((verified, shown) -> {
            drawnFrom.add(verified.entry());
            sections.add(new Section.Heading(VerifyWords.get(
                    "paper.for",
                    verified.what().what(),
                    verified.what().method().version())));
            sections.add(new Section.Facts(facts(verified)));
            for (Shown each : shown) {
                drawnFrom.add(each.entry());
                sections.add(new Section.Heading(VerifyWords.get("paper.evidence", each.title(), each.entry())));
                each.words().forEach(text -> sections.add(new Section.Paragraph(text)));
                each.reach()
                        .ifPresent(reach -> sections.add(new Section.Notice(
                                BenchCard.tone(reach), VerifyWords.get("card.level"), reach.words())));
                each.plot().ifPresent(plot -> sections.add(new Section.Figure(plot)));
            }
        });
        return new Report(
                VerifyWords.get("paper.title", method.title(), method.ref().id()), sections, drawnFrom);
    }

    private static List<Section.Fact> facts(Verified verified) {
        List<Section.Fact> facts = new ArrayList<>();
        facts.add(new Section.Fact(
                VerifyWords.get("column.by"),
                VerifyWords.get(
                        verified.signed() ? "paper.signed" : "paper.unsigned",
                        verified.by(),
                        verified.at().toString())));
        verified.what().remark().ifPresent(text -> facts.add(new Section.Fact(VerifyWords.get("paper.remark"), text)));
        facts.add(new Section.Fact(
                VerifyWords.get("column.state"),
                verified.ended()
                        .map(end -> VerifyWords.get("state.ended", end.at(), end.reason()))
                        .orElseGet(() -> VerifyWords.get("state.holds"))));
        return facts;
    }
}
