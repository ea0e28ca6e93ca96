package wickbench.ledger.services;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wickbench.api.command.Terminal;
import wickbench.api.json.Json;
import wickbench.api.owed.OwedItem;
import wickbench.api.profile.SiteFacts;
import wickbench.ledger.ResultRow;
import wickbench.ledger.acts.Case;
import wickbench.ledger.acts.Outside;
import wickbench.ledger.acts.Product;
import wickbench.ledger.acts.ReleasePlan;
import wickbench.ledger.acts.Reviewing.Waiting;
import wickbench.ledger.acts.Standing;
import wickbench.ledger.acts.Taken;
import wickbench.reading.OutcomeWords;
import wickbench.reading.ReadingWords;

/** Prints what people act on: tables for people, JSON for machines. */
final class ActsPrint {
    private final Terminal terminal;
    private final SiteFacts site;
    private final java.time.InstantSource clock;

    ActsPrint(Terminal terminal, SiteFacts site, java.time.InstantSource clock) {
        this.terminal = terminal;
        this.site = site;
        this.clock = clock;
    }

    void waiting(Waiting waiting) {
        if (terminal.json()) {
            terminal.json(Json.object().with("waiting", waiting.all()).with("late", waiting.late()));
        } else {
            terminal.line(LedgerWords.get("review.waiting", waiting.all(), waiting.late()));
        }
    }

    void plans(List<ReleasePlan> plans) {
        if (terminal.json()) {
            terminal.json(Json.array(plans.stream().map(ReleasePlan::body).toList()));
        } else if (plans.isEmpty()) {
            terminal.line(LedgerWords.get("plan.none"));
        }
        if (!terminal.json()) {
            plans.forEach(plan -> {
                terminal.line(plan.line());
                plan.points().forEach(point -> terminal.line("  " + point.place() + " – " + point.method()));
            });
        }
    }

    void cases(List<Case> cases) {
        if (terminal.json()) {
            terminal.json(Json.array(cases.stream().map(ActsJson::of).toList()));
        } else if (cases.isEmpty()) {
            terminal.line(LedgerWords.get("actions.none"));
        } else {
            cases.forEach(this::one);
        }
    }

    private void one(Case each) {
        ResultRow row = each.result();
        SiteClock times = times();
        terminal.line(LedgerWords.get(
                "case.head",
                OutcomeWords.text(row.outcome(), row.dilution()),
                row.sample(),
                row.place(),
                times.minute(row.happened()),
                row.id()));
        if (each.clash()) {
            below(LedgerWords.get("case.clash"));
        }
        below(each.lastGood()
                .map(good -> LedgerWords.get("case.last-good", times.minute(good.at())))
                .orElseGet(() -> LedgerWords.get("case.no-last-good")));
        each.products().forEach(product -> below(product(product)));
        each.cause().ifPresent(cause -> below(LedgerWords.get("case.cause", cause)));
        each.owed().forEach(item -> below(owed(item)));
        each.outside().forEach(report -> below(outside(report)));
        each.taken().forEach(taken -> below(taken(taken)));
    }

    private String product(Product product) {
        return LedgerWords.get(
                product.name().isEmpty() ? "case.product" : "case.batch",
                product.name(),
                LedgerWords.get("state." + product.state().code()),
                age(product.since()));
    }

    private String owed(OwedItem item) {
        String what = ReadingWords.text(item.step().owed());
        return item.done()
                ? LedgerWords.get(
                        "case.done",
                        what,
                        item.answers().stream().map(Object::toString).collect(Collectors.joining(", ")))
                : LedgerWords.get("case.open", what, age(item.since()));
    }

    SiteFacts site() {
        return site;
    }

    private static String outside(Outside report) {
        return LedgerWords.get(
                "outside.line", report.laboratory(), report.reference(), report.target(), OutsidePrint.found(report));
    }

    private String taken(Taken taken) {
        String line = LedgerWords.get(
                "case.taken",
                times().minute(taken.entry().at()),
                LedgerWords.get("move." + taken.decided().move().code()),
                taken.entry().by(),
                taken.decided().reason(),
                taken.entry().ref());
        return taken.stands() ? line : LedgerWords.get("case.lost", line);
    }

    void standing(Standing standing) {
        if (terminal.json()) {
            terminal.json(ActsJson.of(standing));
            return;
        }
        terminal.line(LedgerWords.get(
                "standing.head." + standing.subject().sort().code(),
                standing.subject().name()));
        terminal.line(LedgerWords.get(
                standing.mayGo() ? "standing.go" : standing.calledBack() ? "standing.back" : "standing.stay"));
        standing.reasons().forEach(reason -> below(reason.text()));
        terminal.line("");
        terminal.line(LedgerWords.get("standing.points"));
        standing.points().forEach(point -> below(point(point)));
        if (standing.points().isEmpty()) {
            below(LedgerWords.get("standing.no-points"));
        }
        terminal.line("");
        terminal.line(LedgerWords.get("standing.results", standing.results().size()));
        standing.results().forEach(row -> below(row(row)));
        standing.outside().forEach(report -> below(outside(report)));
        standing.cases().forEach(this::one);
        standing.released()
                .forEach(entry -> terminal.line(
                        LedgerWords.get("standing.released", times().minute(entry.at()), entry.by(), entry.ref())));
        terminal.line("");
        terminal.line(LedgerWords.get("caution"));
    }

    private String point(Standing.Tested tested) {
        return LedgerWords.get(
                tested.good() ? "standing.good" : "standing.bad",
                tested.point().place(),
                tested.point().method(),
                tested.result().map(this::row).orElseGet(() -> LedgerWords.get("standing.untested")));
    }

    private String row(ResultRow row) {
        Optional<String> mark = row.held()
                ? Optional.of(LedgerWords.get("mark.held"))
                : Optional.of(LedgerWords.get("mark.in-doubt")).filter(word -> row.inDoubt());
        return times().minute(row.happened()) + "  " + row.sample() + "  " + row.place() + "  "
                + OutcomeWords.text(row.outcome(), row.dilution()) + mark.orElse("") + "  " + row.ref();
    }

    private void below(String text) {
        terminal.line("  " + text);
    }

    private SiteClock times() {
        return new SiteClock(site.now().zone());
    }

    private String age(Instant since) {
        Duration age = Duration.between(since, clock.instant());
        return age.toDays() > 0
                ? LedgerWords.get("age.days", age.toDays())
                : LedgerWords.get("age.hours", Math.max(0, age.toHours()));
    }
}
