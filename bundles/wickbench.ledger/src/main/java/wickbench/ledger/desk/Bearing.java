package wickbench.ledger.desk;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import wickbench.api.clash.Clash;
import wickbench.api.clash.Settlement;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Journal;
import wickbench.api.json.Json;
import wickbench.ledger.ResultRow;
import wickbench.ledger.acts.Case;

/**
 * Which clashes bear on a release.
 *
 * <p>Those on its results, cases, methods, lots and plans. And those of which one decision names a line of it, of whatever kind: what
 * is stated of a line, its products, points, cleans and rules decides which tests were asked for.
 */
record Bearing(Journal journal, List<String> lines, Set<String> subjects) {

    static Bearing on(Journal journal, List<String> lines, List<ResultRow> results, List<Case> cases) {
        Set<String> subjects = new LinkedHashSet<>();
        results.forEach(row -> {
            subjects.add("result:" + row.id());
            subjects.add("method:" + row.method().id());
            subjects.add("lot:" + row.lot());
        });
        cases.forEach(each -> subjects.add(ActsView.CASE + each.result().id()));
        lines.forEach(line -> subjects.add(ActsView.PLAN + line));
        return new Bearing(journal, lines, subjects);
    }

    List<Clash> of(List<Clash> open) {
        return open.stream()
                .filter(clash -> subjects.stream().anyMatch(clash.subject()::endsWith)
                        || clash.decisions().stream().anyMatch(this::namesLine))
                .toList();
    }

    private boolean namesLine(EntryRef decision) {
        return journal.entry(decision).filter(this::namesLine).isPresent();
    }

    private boolean namesLine(Entry entry) {
        return Settlement.of(entry).stream()
                        .flatMap(settled -> settled.among().stream())
                        .anyMatch(this::namesLine)
                || entry.body().get("line").filter(this::isLine).isPresent()
                || entry.body().get("lines").filter(this::isLine).isPresent();
    }

    private boolean isLine(Json said) {
        return said instanceof Json.Arr all
                ? all.items().stream().anyMatch(this::isLine)
                : said instanceof Json.Text name && lines.contains(name.value());
    }
}
