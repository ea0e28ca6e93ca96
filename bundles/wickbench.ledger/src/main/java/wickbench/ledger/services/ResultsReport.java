package wickbench.ledger.services;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import wickbench.api.chart.Axis;
import wickbench.api.chart.Chart;
import wickbench.api.chart.Series;
import wickbench.api.journal.EntryRef;
import wickbench.api.report.Report;
import wickbench.api.report.Section;
import wickbench.api.report.Section.Tone;
import wickbench.ledger.Filter;
import wickbench.ledger.ResultRow;
import wickbench.ledger.Results;
import wickbench.ledger.Sort;
import wickbench.ledger.SortColumn;
import wickbench.ledger.Week;
import wickbench.ledger.acts.Case;
import wickbench.ledger.acts.Deciding;

/** A report over results: what they come to, each of them, every correction, and what was decided because of them. */
record ResultsReport(Results results, Deciding deciding, SignedBy signed) {
    private static final Sort AS_THEY_CAME = new Sort(SortColumn.HAPPENED, true);
    private static final List<String> COLUMNS = List.of(
            "when", "sample", "place", "line", "batch", "method", "lot", "operator", "outcome", "reviewed", "entry");

    /** @param first what stands before everything else */
    Report report(String title, Filter filter, List<Section> first, List<EntryRef> alsoFrom) {
        results.refuseFalsified(filter);
        Gist gist = Gist.of(rows(filter, row -> row));
        List<EntryRef> drawnFrom = new ArrayList<>(gist.drawnFrom());
        drawnFrom.addAll(alsoFrom);
        List<Case> cases = gist.held().stream()
                .flatMap(row -> deciding.of(row.id()).stream())
                .toList();
        List<Section> sections = new ArrayList<>(first);
        sections.addAll(notices(gist, cases));
        sections.add(new Section.Facts(gist.counts().stream()
                .map(count ->
                        new Section.Fact(LedgerWords.get("report.count." + count.what()), String.valueOf(count.many())))
                .toList()));
        weeks(filter, sections);
        part(sections, "results", table(filter));
        part(sections, "corrections", new CorrectionTable(results, signed).of(gist.corrected(), drawnFrom::add));
        part(sections, "cases", new CaseTable(signed).of(cases, drawnFrom::add));
        sections.add(new Section.Paragraph(LedgerWords.get("report.verify")));
        return new Report(title, sections, drawnFrom);
    }

    private <T> Iterable<T> rows(Filter filter, Function<ResultRow, T> shown) {
        return new PagedRows<>(results, filter, AS_THEY_CAME, shown);
    }

    private static void part(List<Section> sections, String key, Section section) {
        sections.add(new Section.Heading(LedgerWords.get("report." + key)));
        sections.add(section);
    }

    private static List<Section> notices(Gist gist, List<Case> cases) {
        List<Section> notices = new ArrayList<>();
        long open = cases.stream().filter(Case::open).count();
        if (open > 0) {
            notices.add(notice(Tone.ALARM, "open", open));
        }
        if (gist.inDoubt() > 0) {
            notices.add(notice(Tone.CAUTION, "in-doubt", gist.inDoubt()));
        }
        if (gist.unreviewed() > 0) {
            notices.add(notice(Tone.CAUTION, "unreviewed", gist.unreviewed()));
        }
        if (notices.isEmpty() && gist.strips() > 0) {
            notices.add(notice(Tone.NOTICE, "all-reviewed", gist.strips()));
        }
        return notices;
    }

    private static Section notice(Tone tone, String key, long many) {
        return new Section.Notice(
                tone, LedgerWords.get("report.notice." + key), LedgerWords.get("report.notice." + key + ".text", many));
    }

    private void weeks(Filter filter, List<Section> sections) {
        List<Week> weeks = results.weekly(filter);
        if (weeks.size() > 1) {
            double[] x = new double[weeks.size()];
            double[] positive = new double[weeks.size()];
            double[] invalid = new double[weeks.size()];
            for (int at = 0; at < x.length; at++) {
                x[at] = at;
                // where no strip was run, nothing was found; that is no zero
                boolean none = weeks.get(at).strips() == 0;
                positive[at] = none ? Double.NaN : weeks.get(at).positives();
                invalid[at] = none ? Double.NaN : weeks.get(at).invalids();
            }
            List<String> mondays =
                    weeks.stream().map(week -> week.monday().toString()).toList();
            sections.add(new Section.Figure(new Chart(
                    LedgerWords.get("report.weeks"),
                    new Axis(LedgerWords.get("report.weeks.axis"), "", new Axis.Named(mondays)),
                    Axis.linear(LedgerWords.get("report.weeks.strips"), ""),
                    List.of(
                            new Series(LedgerWords.get("report.count.invalids"), Series.Mark.BARS, x, invalid),
                            new Series(LedgerWords.get("report.count.positives"), Series.Mark.BARS, x, positive)),
                    List.of())));
        }
    }

    private Section table(Filter filter) {
        ResultCells cells = new ResultCells(signed.clock(), signed.names());
        return Section.Table.of(
                COLUMNS.stream()
                        .map(column -> LedgerWords.get("column." + column))
                        .toList(),
                rows(filter, row -> cells(cells, row)));
    }

    private List<String> cells(ResultCells cells, ResultRow row) {
        List<String> all = new ArrayList<>(cells.of(row));
        // findings are told by each result's own report
        all.set(all.size() - 2, reviewed(row));
        return all;
    }

    private String reviewed(ResultRow row) {
        return row.reviewed()
                .map(review -> signed.names().apply(review.by()) + "\n"
                        + signed.clock().minute(review.at()))
                .orElseGet(() -> LedgerWords.get("report.waits"));
    }
}
