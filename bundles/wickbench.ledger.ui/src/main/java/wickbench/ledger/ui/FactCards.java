package wickbench.ledger.ui;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.authority.Signature;
import wickbench.api.gate.Answer;
import wickbench.api.journal.Checkpoint;
import wickbench.api.journal.Entry;
import wickbench.api.method.Method;
import wickbench.api.profile.Site;
import wickbench.api.reading.Reading;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.Sample;
import wickbench.api.words.Decimals;
import wickbench.ledger.Signed;
import wickbench.ledger.Statement;
import wickbench.reading.ReadingWords;
import wickbench.widgets.Badge;
import wickbench.widgets.Facts;
import wickbench.widgets.Fit;
import wickbench.widgets.Mark;
import wickbench.widgets.MarkedLine;
import wickbench.widgets.Meaning;
import wickbench.widgets.Shape;
import wickbench.widgets.Spans;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** What is known beside the strip: the sample, what held then, the history, the seal. */
record FactCards(Theme theme, Site site, WhoIsWho people) {
    void sample(Composite card, Reading reading) {
        Sample sample = reading.sample();
        Facts facts = new Facts(card, theme).add(word("sample"), sample.code()).add(word("place"), sample.place());
        sample.line().ifPresent(line -> facts.add(word("line"), line));
        sample.batch().ifPresent(batch -> facts.add(word("batch"), batch));
        sample.reason().ifPresent(reason -> facts.add(word("reason"), ReadingWords.text(reason)));
        sample.reasonText().ifPresent(text -> facts.add(word("reason-text"), text));
        sample.visual().ifPresent(visual -> facts.add(word("visual"), ReadingWords.text(visual)));
        sample.control().ifPresent(control -> facts.add(word("control"), ReadingWords.text(control)));
        facts.add(word("dilution"), "\u00d7" + Decimals.of(sample.dilution()));
        sample.area().ifPresent(area -> facts.add(word("area"), Decimals.of(area) + " cm\u00b2"));
        reading.times().shaken().ifPresent(span -> facts.add(word("shaken"), Spans.words(span)));
        reading.preChecks().forEach((name, value) -> facts.add(name, Decimals.of(value)));
    }

    /** Shows what was copied into the entry, as it was then. */
    void then(Composite card, RecordedReading recorded) {
        Reading reading = recorded.reading();
        Method method = recorded.method();
        Facts facts = new Facts(card, theme)
                .add(word("method"), method.title() + ", " + method.ref())
                .add(
                        word("limit"),
                        method.limit().value() + " "
                                + ReadingWords.text(method.limit().holds()))
                .add(word("route"), ReadingWords.text(reading.route()))
                .add(word("lot"), reading.lot() + ", " + method.kit())
                .add(word("operator"), people.full(reading.operator()));
        reading.observer().ifPresent(observer -> facts.add(word("observer"), people.full(observer)));
        recorded.answers().forEach(answer -> facts.add(neighbour(answer), words(answer)));
    }

    private static String neighbour(Answer answer) {
        return LedgerUiWords.get("neighbour", answer.neighbour());
    }

    private static String words(Answer answer) {
        if (answer instanceof Answer.Cleared cleared) {
            return LedgerUiWords.get("answer.cleared", facts(cleared.facts()));
        }
        if (answer instanceof Answer.Refused refused) {
            return LedgerUiWords.get(
                    "answer.refused",
                    String.join(
                            "; ",
                            refused.reasons().stream().map(Answer.Reason::code).toList()),
                    facts(refused.facts()));
        }
        return LedgerUiWords.get("answer.not-checked");
    }

    private static String facts(Map<String, String> facts) {
        return String.join(
                "; ",
                facts.entrySet().stream()
                        .map(fact -> fact.getKey() + " " + fact.getValue())
                        .sorted()
                        .toList());
    }

    void history(Composite card, List<Statement> history) {
        for (Statement statement : history) {
            Composite row = Fit.wide(theme.controls().box(card, 2));
            new Badge(
                    row,
                    theme,
                    Type.SMALL,
                    Mark.of(
                            statement.reading().verdict().outcome(),
                            statement.reading().reading().sample().dilution()));
            theme.controls().text(row, statement.counts() ? Type.STRONG : Type.BODY, said(statement));
            if (Signature.asked(statement.entry().kind())) {
                signature(card, statement.entry());
            }
            origin(statement.reading().reading().origin())
                    .ifPresent(text -> theme.controls().text(card, Type.SMALL, text));
        }
    }

    private void signature(Composite card, Entry entry) {
        Signed.under(entry)
                .ifPresentOrElse(
                        name -> theme.controls().text(card, Type.SMALL, SignatureWords.of(name, people, times())),
                        () -> Fit.wide(new MarkedLine(
                                card,
                                theme,
                                new Mark("", Shape.TRIANGLE, Meaning.CAUTION),
                                LedgerUiWords.get("signature.none"))));
    }

    private SiteTimes times() {
        return new SiteTimes(site.zone());
    }

    private String said(Statement statement) {
        Entry entry = statement.entry();
        String how = statement
                .reason()
                .map(reason -> LedgerUiWords.get("history.corrected", reason))
                .orElseGet(() -> LedgerUiWords.get("history.recorded"));
        return LedgerUiWords.get("history.line", how, times().second(entry.at()), people.full(entry.by()));
    }

    private static Optional<String> origin(Reading.Origin origin) {
        return origin instanceof Reading.Origin.Sheet sheet
                ? Optional.of(LedgerUiWords.get("history.sheet", sheet.file(), sheet.line()))
                : Optional.empty();
    }

    void seal(Composite card, Ledger.Shown shown) {
        Facts facts = new Facts(card, theme);
        shown.detail()
                .history()
                .forEach(statement -> facts.add(
                                word("entry"),
                                Type.MONO,
                                statement.entry().ref().toString())
                        .add(
                                word("leaf"),
                                Type.MONO,
                                grouped(statement.entry().leaf().hex())));
        Entry last = shown.detail()
                .history()
                .get(shown.detail().history().size() - 1)
                .entry();
        facts.add(
                word("checkpoint"),
                shown.checkpoint()
                        .filter(checkpoint ->
                                checkpoint.station().equals(last.ref().station()))
                        .map(checkpoint -> checkpoint(checkpoint, last))
                        .orElseGet(() -> LedgerUiWords.get("seal.none")));
        theme.controls().text(card, Type.SMALL, LedgerUiWords.get("seal.prove"));
    }

    private String checkpoint(Checkpoint checkpoint, Entry last) {
        return LedgerUiWords.get(
                last.ref().seq() < checkpoint.size() ? "seal.covered" : "seal.not-yet",
                checkpoint.size(),
                checkpoint.root().hex().substring(0, 16));
    }

    /** Breaks a hash into groups, so that lines can break and eyes can compare. */
    private static String grouped(String hex) {
        return hex.replaceAll("(.{8})(?!$)", "$1 ");
    }

    private static String word(String name) {
        return LedgerUiWords.get("fact." + name);
    }
}
