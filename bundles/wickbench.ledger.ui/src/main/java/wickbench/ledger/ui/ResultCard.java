package wickbench.ledger.ui;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.profile.Site;
import wickbench.api.reading.Finding;
import wickbench.api.reading.Reading;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.Sample;
import wickbench.api.reading.Verdict;
import wickbench.ledger.InDoubt;
import wickbench.ledger.ResultDetail;
import wickbench.ledger.ResultRow;
import wickbench.reading.FindingWords;
import wickbench.reading.OutcomeWords;
import wickbench.reading.ReadingWords;
import wickbench.widgets.Badge;
import wickbench.widgets.Fit;
import wickbench.widgets.Mark;
import wickbench.widgets.MarkedLine;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Shape;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** One result in full, from what it says to how it is sealed. */
record ResultCard(Composite parent, Theme theme, Site site, WhoIsWho people) {
    void fill(Ledger.Shown shown) {
        RecordedReading recorded = shown.detail().reading();
        head(shown.detail());
        doubts(shown.detail().doubts());
        new StripCard(card("card.strip"), theme, site, people).fill(recorded);
        times(recorded);
        findings(recorded.verdict());
        FactCards facts = new FactCards(theme, site, people);
        facts.sample(card("card.sample"), recorded.reading());
        facts.then(card("card.then"), recorded);
        facts.history(card("card.history"), shown.detail().history());
        facts.seal(card("card.seal"), shown);
    }

    /** What the strip said is the journal's, for the list may have been changed; whether it was reviewed is the list's. */
    private void head(ResultDetail detail) {
        ResultRow row = detail.row();
        Sample sample = detail.reading().reading().sample();
        Verdict verdict = detail.reading().verdict();
        theme.controls().text(parent, Type.HEADING, sample.place());
        theme.controls().text(parent, Type.BODY, where(sample, row));
        Fit.wide(new Badge(parent, theme, Type.LARGE, Mark.of(verdict.outcome(), sample.dilution())));
        theme.controls().text(parent, Type.STRONG, OutcomeWords.sentence(verdict, sample.dilution()));
        String review = row.reviewed()
                .map(found -> LedgerUiWords.get("result.reviewed", people.name(found.by()), times().minute(found.at())))
                .orElseGet(() -> LedgerUiWords.get("result.review-by", site.reviewBy(row.waits())));
        theme.controls().quiet(parent, review);
        if (detail.held()) {
            Fit.wide(new Note(parent, theme, Meaning.ALARM, LedgerUiWords.get("result.held")));
        }
        OutcomeWords.owed(verdict)
                .forEach(what ->
                        Fit.wide(new MarkedLine(parent, theme, new Mark("", Shape.TRIANGLE, Meaning.ALARM), what)));
    }

    private void doubts(List<InDoubt> doubts) {
        doubts.forEach(doubt -> Fit.wide(new Note(
                parent,
                theme,
                doubt.open() ? Meaning.ALARM : Meaning.NOTICE,
                LedgerUiWords.get(
                        doubt.open() ? "result.in-doubt" : "result.decided",
                        ReadingWords.doubt(doubt.cause()),
                        doubt.entry()))));
    }

    private String where(Sample sample, ResultRow row) {
        return Stream.of(
                        Stream.of(sample.code()),
                        sample.line().stream(),
                        sample.batch().stream(),
                        sample.reason().map(ReadingWords::text).stream(),
                        Stream.of(times().minute(row.happened())))
                .flatMap(part -> part)
                .collect(Collectors.joining(" \u00b7 "));
    }

    private SiteTimes times() {
        return new SiteTimes(site.zone());
    }

    private void times(RecordedReading recorded) {
        Reading reading = recorded.reading();
        List<TimeTrack> tracks = TimeTrack.of(reading.times(), recorded.method().timing());
        Composite card = card("card.times");
        tracks.forEach(track -> Fit.wide(new TimeLine(card, theme, times(), track)));
        if (tracks.isEmpty()) {
            theme.controls().text(card, Type.BODY, LedgerUiWords.get("time.none"));
        }
    }

    private void findings(Verdict verdict) {
        Composite card = card("card.findings");
        if (verdict.findings().isEmpty()) {
            Fit.wide(new MarkedLine(
                    card, theme, new Mark("", Shape.RING, Meaning.CALM), LedgerUiWords.get("findings.none")));
        }
        verdict.findings().forEach(finding -> finding(card, finding));
    }

    private void finding(Composite card, Finding finding) {
        Mark mark = Mark.of(finding.severity(), ReadingWords.text(finding.severity()));
        Fit.wide(new MarkedLine(card, theme, mark, FindingWords.text(finding)));
    }

    private Composite card(String heading) {
        Composite card = Fit.wide(theme.controls().card(parent, 1));
        theme.controls().label(card, Type.STRONG, LedgerUiWords.get(heading));
        return card;
    }
}
