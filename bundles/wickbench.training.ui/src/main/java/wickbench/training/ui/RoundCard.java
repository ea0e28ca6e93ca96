package wickbench.training.ui;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.api.chart.Chart;
import wickbench.api.person.PersonId;
import wickbench.api.report.Report;
import wickbench.api.report.Section;
import wickbench.shell.PageContext;
import wickbench.training.Agreement;
import wickbench.training.ReaderScore;
import wickbench.training.Round;
import wickbench.training.StripClass;
import wickbench.widgets.Badge;
import wickbench.widgets.ChartView;
import wickbench.widgets.Facts;
import wickbench.widgets.Fit;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.TableKit;
import wickbench.widgets.TableSpec;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** One round in full: how it stands, what is to be done about it, and what it came to; calls only once the key is opened. */
record RoundCard(
        PageContext context,
        TrainingDoors doors,
        RoundList.Known known,
        RoundsView.Going going,
        Runnable grown,
        Runnable changed) {
    private static final int SCORES = 260;
    private static final int CALLS = 300;
    private static final int CHART = 300;

    void fill(Composite room, RoundList.Whole whole) {
        Theme theme = context.theme();
        Round round = whole.round();
        theme.controls().text(room, Type.HEADING, TrainingUiWords.get("round.title", round.id()));
        new Badge(room, theme, RoundTable.mark(round));
        new RoundActs(context, doors, known, going, grown, changed).fill(room, whole);
        facts(room, round);
        round.keyHolds().ifPresent(holds -> key(room, holds));
        if (round.state() == Round.State.OPEN) {
            called(room, round);
        }
        if (!round.scores().isEmpty()) {
            scores(room, round);
        }
        whole.agreement().ifPresent(found -> agreement(room, found));
        new RoundCompare(context, doors, known, grown).fill(room, round);
        round.key().ifPresent(opened -> {
            theme.controls().label(room, Type.STRONG, TrainingUiWords.get("calls.heading"));
            table(room, CallsTable.of(round, opened.key(), whole.truth(), known.site()), CALLS);
        });
        charts(whole.report()).forEach(chart -> chart(room, chart));
    }

    private void facts(Composite room, Round round) {
        Facts facts = new Facts(room, context.theme());
        facts.add(
                TrainingUiWords.get("rounds.column.method"),
                round.plan().method().value());
        facts.add(
                TrainingUiWords.get("round.opened"),
                TrainingUiWords.get(
                        "round.opened.by",
                        Times.minute(round.opened(), known.site().zone()),
                        known.site().name(round.openedBy())));
        facts.add(TrainingUiWords.get("rounds.column.strips"), strips(round));
        facts.add(
                TrainingUiWords.get("round.rule"),
                DesignPanel.words(round.plan().design().rule()));
        facts.add(
                TrainingUiWords.get("round.window"),
                TrainingUiWords.get(
                        "round.window.say",
                        round.plan().develop().toSeconds(),
                        round.plan().latest().toSeconds()));
        facts.add(TrainingUiWords.get("round.readers"), names(round.plan().readers()));
        if (!round.plan().experts().isEmpty()) {
            facts.add(TrainingUiWords.get("round.experts"), names(round.plan().experts()));
        }
        facts.add(TrainingUiWords.get("round.key-by"), round.plan().keyMaker());
        facts.add(TrainingUiWords.get("round.commitment"), round.commitment().hex());
    }

    private static String strips(Round round) {
        return Arrays.stream(StripClass.values())
                .filter(kind -> round.plan().design().of(kind) > 0)
                .map(kind -> TrainingUiWords.get(
                        "round.strips.kind",
                        round.plan().design().of(kind),
                        TrainingUiWords.get("class." + kind.code())))
                .collect(Collectors.joining(", "));
    }

    private String names(List<PersonId> people) {
        return people.stream().map(known.site()::name).collect(Collectors.joining(", "));
    }

    private void key(Composite room, boolean holds) {
        Fit.wide(new Note(
                room,
                context.theme(),
                holds ? Meaning.CALM : Meaning.ALARM,
                TrainingUiWords.get(holds ? "round.key-holds" : "round.key-broken")));
    }

    /** How far everybody is, and no more. */
    private void called(Composite room, Round round) {
        context.theme().controls().label(room, Type.STRONG, TrainingUiWords.get("round.called"));
        Facts facts = new Facts(room, context.theme());
        round.plan()
                .callers()
                .forEach(person -> facts.add(
                        known.site().who(person),
                        TrainingUiWords.get(
                                "of",
                                round.callsOf(person).size(),
                                round.codes().size())));
    }

    private void scores(Composite room, Round round) {
        context.theme().controls().label(room, Type.STRONG, TrainingUiWords.get("scores.heading"));
        TableKit<ReaderScore> kit = table(room, ScoreTable.of(round, known.site()), SCORES);
        kit.onOpen(score -> going.person(score.reader()));
        context.theme().controls().text(room, Type.SMALL, TrainingUiWords.get("scores.open"));
    }

    private <T> TableKit<T> table(Composite room, TableSpec<T> spec, int height) {
        TableKit<T> kit = new TableKit<>(room, context, spec);
        high(kit.control(), height);
        return kit;
    }

    private void agreement(Composite room, Agreement found) {
        context.theme()
                .controls()
                .text(
                        room,
                        Type.BODY,
                        TrainingUiWords.get(
                                "agreement.say",
                                found.readers().size(),
                                Percent.plain(found.kappa()),
                                Percent.plain(found.ac1())));
        if (!found.disputed().isEmpty()) {
            Fit.wide(new Note(
                    room,
                    context.theme(),
                    Meaning.NOTICE,
                    TrainingUiWords.get("agreement.disputed", String.join(", ", found.disputed()))));
        }
    }

    /** What is drawn on paper is drawn here. */
    private static List<Chart> charts(Report report) {
        return report.sections().stream()
                .filter(Section.Figure.class::isInstance)
                .map(figure -> ((Section.Figure) figure).chart())
                .toList();
    }

    private void chart(Composite room, Chart chart) {
        ChartView view = new ChartView(room, context, doors.painter());
        high(view, CHART);
        view.chart(chart);
    }

    private void high(Control control, int height) {
        GridData data = new GridData(GridData.FILL_HORIZONTAL);
        data.heightHint = context.theme().px(height);
        control.setLayoutData(data);
    }
}
