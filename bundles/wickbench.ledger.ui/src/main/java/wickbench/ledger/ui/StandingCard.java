package wickbench.ledger.ui;

import java.time.Instant;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.authority.Act;
import wickbench.api.authority.Permission.Denied;
import wickbench.ledger.ResultRow;
import wickbench.ledger.acts.Standing;
import wickbench.ledger.acts.Subject;
import wickbench.widgets.Badge;
import wickbench.widgets.Fit;
import wickbench.widgets.Mark;
import wickbench.widgets.MarkedLine;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Shape;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** A line or batch: what was tested, what stands, may it go? */
record StandingCard(Composite parent, Theme theme, ActDoors.Known known, Instant now) {

    /** @param release hears that the person wants to let it go, before it is signed */
    void fill(Standing standing, Consumer<Subject> release) {
        theme.controls()
                .text(
                        parent,
                        Type.HEADING,
                        LedgerUiWords.get(
                                "standing." + standing.subject().sort().code(),
                                standing.subject().name()));
        Fit.wide(new Badge(parent, theme, Type.LARGE, verdict(standing)));
        if (standing.calledBack()) {
            Fit.wide(new Note(parent, theme, Meaning.ALARM, LedgerUiWords.get("standing.back")));
        }
        standing.reasons()
                .forEach(reason -> Fit.wide(
                        new MarkedLine(parent, theme, new Mark("", Shape.TRIANGLE, Meaning.ALARM), reason.text())));
        button(standing, release);
        points(standing);
        results(standing);
        standing.released()
                .forEach(entry -> theme.controls()
                        .text(
                                parent,
                                Type.BODY,
                                LedgerUiWords.get(
                                        "standing.released",
                                        known.times().minute(entry.at()),
                                        known.people().full(entry.by()),
                                        entry.ref())));
        theme.controls().text(parent, Type.SMALL, LedgerUiWords.get("standing.caution"));
        standing.cases().forEach(each -> new CaseCard(parent, theme, known, now).facts(each));
    }

    private static Mark verdict(Standing standing) {
        return standing.mayGo()
                ? new Mark(LedgerUiWords.get("standing.go"), Shape.RING, Meaning.CALM)
                : new Mark(LedgerUiWords.get("standing.stay"), Shape.TRIANGLE, Meaning.ALARM);
    }

    private void button(Standing standing, Consumer<Subject> release) {
        Button button = theme.controls()
                .mainButton(parent, LedgerUiWords.get("release.open"), () -> release.accept(standing.subject()));
        button.setEnabled(standing.mayGo() && known.rights().to(Act.RELEASE).allowed());
        if (known.rights().to(Act.RELEASE) instanceof Denied denied) {
            theme.controls().text(parent, Type.SMALL, denied.text());
        }
    }

    private void points(Standing standing) {
        Composite card = card("standing.points");
        standing.points().forEach(point -> Fit.wide(new MarkedLine(card, theme, mark(point), line(point))));
        if (standing.points().isEmpty()) {
            theme.controls().text(card, Type.BODY, LedgerUiWords.get("standing.no-points"));
        }
    }

    private static Mark mark(Standing.Tested point) {
        return point.good()
                ? new Mark(LedgerUiWords.get("standing.stands"), Shape.RING, Meaning.CALM)
                : new Mark(LedgerUiWords.get("standing.lacks"), Shape.TRIANGLE, Meaning.ALARM);
    }

    private String line(Standing.Tested point) {
        return point.point().place() + " \u00b7 " + point.point().method() + " \u00b7 "
                + point.result().map(this::row).orElseGet(() -> LedgerUiWords.get("standing.untested"));
    }

    private void results(Standing standing) {
        Composite card = card("standing.results");
        standing.results()
                .forEach(row -> Fit.wide(new MarkedLine(
                        card, theme, Mark.of(row.outcome(), row.dilution()), row.place() + " \u00b7 " + row(row))));
        if (standing.results().isEmpty()) {
            theme.controls().text(card, Type.BODY, LedgerUiWords.get("standing.untested"));
        }
    }

    private String row(ResultRow row) {
        return row.sample() + " \u00b7 " + known.times().minute(row.happened());
    }

    private Composite card(String heading) {
        Composite card = Fit.wide(theme.controls().card(parent, 1));
        theme.controls().label(card, Type.STRONG, LedgerUiWords.get(heading));
        return card;
    }
}
