package wickbench.ledger.services;

import java.util.List;
import wickbench.api.command.Terminal;
import wickbench.api.journal.Founding;
import wickbench.api.journal.Journal;
import wickbench.api.json.Json;
import wickbench.api.profile.SiteFacts;
import wickbench.ledger.ResultDetail;
import wickbench.ledger.ResultRow;
import wickbench.ledger.Unread;

/** Prints results, for people with the cautions that belong to them. */
final class Print {
    private final Terminal terminal;
    private final Journal journal;
    private final SiteFacts site;
    private final PersonNames people;

    Print(Terminal terminal, Journal journal, SiteFacts site, PersonNames people) {
        this.terminal = terminal;
        this.journal = journal;
        this.site = site;
        this.people = people;
    }

    void list(List<ResultRow> rows, long all) {
        if (terminal.json()) {
            terminal.json(Json.array(rows.stream().map(ResultJson::row).toList()));
            return;
        }
        if (rows.isEmpty()) {
            terminal.line(LedgerWords.get("list.none"));
        } else {
            terminal.table(ResultCells.header(), rows.stream().map(cells()::of).toList());
            terminal.line(LedgerWords.get("list.shown", rows.size(), all));
        }
        cautions();
    }

    void count(long many) {
        if (terminal.json()) {
            terminal.json(Json.object().with("count", many));
        } else {
            terminal.line(LedgerWords.get("list.count", many));
        }
    }

    ResultCells cells() {
        return new ResultCells(new SiteClock(site.now().zone()), people::of);
    }

    void detail(ResultDetail detail) {
        if (terminal.json()) {
            terminal.json(ResultJson.detail(detail));
            return;
        }
        new DetailText(site.now(), journal.status().checkpoint(), people::of)
                .lines(detail)
                .forEach(terminal::line);
        cautions();
    }

    /** Says what a newer program wrote, so that nobody takes the list for whole. */
    void unread(List<Unread> unread) {
        unread.forEach(each -> terminal.note(LedgerWords.get("unread", each.entries(), each.kind(), each.v())));
    }

    private void cautions() {
        terminal.line("");
        if (journal.founding().filter(Founding::simulated).isPresent()) {
            terminal.line(LedgerWords.get("simulated"));
        }
        terminal.line(LedgerWords.get("caution"));
    }
}
