package wickbench.ledger.services;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.authority.Act;
import wickbench.api.authority.Authority;
import wickbench.api.authority.Passphrase;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.check.Refusal;
import wickbench.api.home.Home;
import wickbench.api.index.Index;
import wickbench.api.journal.Draft;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Journal;
import wickbench.api.person.PersonId;
import wickbench.api.profile.SiteFacts;
import wickbench.figures.sums.Given;
import wickbench.figures.sums.Reckoned;
import wickbench.figures.sums.Sums;
import wickbench.figures.sums.TableText;
import wickbench.ledger.Filter;
import wickbench.ledger.desk.Bases;
import wickbench.ledger.trend.TrendBase;
import wickbench.ledger.trend.Trending;

/** Reckons trends by the charts of the figures. */
@Component
public final class TrendDesk implements Trending {
    private final Home home;
    private final Journal journal;
    private final Index index;
    private final Authority authority;
    private final SiteFacts site;

    @Activate
    public TrendDesk(
            @Reference Home home,
            @Reference Journal journal,
            @Reference Index index,
            @Reference Authority authority,
            @Reference SiteFacts site) {
        this.home = home;
        this.journal = journal;
        this.index = index;
        this.authority = authority;
        this.site = site;
    }

    @Override
    public Trend of(Asked asked) {
        List<Cell> cells = cells(asked.filter(), asked.events());
        Optional<TrendBase> base = new Bases(index, journal).of(TrendBase.scope(asked.filter()));
        boolean byWeek = asked.kind() != Kind.G && asked.kind() != Kind.T;
        List<Mark> weeks = byWeek ? weeks(cells) : List.of();
        List<Between> between = byWeek ? List.of() : between(asked);
        Reckoned reckoned =
                Sums.find("trend").orElseThrow().reckon(byWeek ? shares(asked, weeks, base) : gaps(asked, between));
        return new Trend(
                asked,
                byWeek ? weeks : between.stream().map(Between::mark).toList(),
                byWeek ? base : Optional.empty(),
                reckoned instanceof Reckoned.Done done ? Optional.of(done.answer()) : Optional.empty(),
                reckoned instanceof Reckoned.Wrong wrong
                        ? Optional.of(wrong.complaint().oneLine())
                        : Optional.empty(),
                ranked(cells, Cell::place),
                ranked(cells, Cell::line),
                cells);
    }

    private List<Cell> cells(Filter filter, Events events) {
        return index.read(LedgerView.NAME, rows -> tests(filter, events).cells(rows));
    }

    /** Only what says where, when and by what; a trend of Positives alone would be no trend. */
    private FirstTests tests(Filter filter, Events events) {
        Filter where = Filter.ALL
                .days(filter.from(), filter.to())
                .withLine(filter.line())
                .withPlace(filter.place())
                .withMethod(filter.method())
                .withTarget(filter.target());
        return new FirstTests(Condition.of(where, this::zone), zone(), events);
    }

    private ZoneId zone() {
        return site.now().zone();
    }

    private static List<Mark> weeks(List<Cell> cells) {
        Map<LocalDate, Mark> weeks = new TreeMap<>();
        cells.forEach(cell -> weeks.merge(
                cell.monday(),
                new Mark(cell.monday().toString(), cell.strips(), cell.events()),
                (one, other) -> new Mark(one.name(), one.strips() + other.strips(), one.events() + other.events())));
        return List.copyOf(weeks.values());
    }

    private static List<Rank> ranked(List<Cell> cells, Function<Cell, String> by) {
        Map<String, Rank> ranks = new LinkedHashMap<>();
        cells.stream()
                .filter(cell -> !by.apply(cell).isEmpty())
                .forEach(cell -> ranks.merge(
                        by.apply(cell),
                        new Rank(by.apply(cell), cell.strips(), cell.events()),
                        (one, other) ->
                                new Rank(one.name(), one.strips() + other.strips(), one.events() + other.events())));
        return ranks.values().stream()
                .sorted(Comparator.comparing(Rank::share).reversed().thenComparing(Rank::name))
                .toList();
    }

    private Given shares(Asked asked, List<Mark> weeks, Optional<TrendBase> base) {
        Optional<Mark> frozen = base.map(period -> sum(weeks(cells(period.filter(), asked.events()))));
        Map<String, String> texts = new LinkedHashMap<>();
        texts.put("chart", asked.kind().code());
        if (asked.kind() != Kind.CUSUM) {
            frozen.ifPresent(over -> texts.put("centre", share(over).toPlainString()));
            return new Given(
                    texts,
                    Map.of(
                            "groups",
                            table("groups", "count,size", weeks, mark -> mark.events() + "," + mark.strips())));
        }
        Mark over = frozen.orElseGet(() -> sum(weeks));
        double target = share(over).doubleValue();
        double size = weeks.isEmpty() ? 1 : (double) sum(weeks).strips() / weeks.size();
        texts.put("target", share(over).toPlainString());
        // of the share of a week of usual size, by the binomial law
        texts.put("sigma", number(Math.sqrt(target * (1 - target) / size)));
        return new Given(
                texts,
                Map.of(
                        "values",
                        table("values", "value", weeks, mark -> share(mark).toPlainString())));
    }

    private static Mark sum(List<Mark> marks) {
        return marks.stream()
                .reduce(
                        new Mark("", 0, 0),
                        (one, other) -> new Mark("", one.strips() + other.strips(), one.events() + other.events()));
    }

    private static BigDecimal share(Mark mark) {
        return mark.strips() == 0
                ? BigDecimal.ZERO
                : BigDecimal.valueOf(mark.events()).divide(BigDecimal.valueOf(mark.strips()), 12, RoundingMode.HALF_UP);
    }

    private static String number(double value) {
        return BigDecimal.valueOf(value).setScale(12, RoundingMode.HALF_UP).toPlainString();
    }

    private static <T> TableText table(String name, String header, List<T> rows, Function<T, String> row) {
        return TableText.of(name, header + "\n" + rows.stream().map(row).collect(Collectors.joining("\n")));
    }

    /** An event with what went before it since the one before. */
    private record Between(Mark mark, long gap, double days) {}

    private List<Between> between(Asked asked) {
        List<FirstTests.Test> tests = index.read(
                LedgerView.NAME, rows -> tests(asked.filter(), asked.events()).inOrder(rows));
        SiteClock clock = new SiteClock(zone());
        List<Between> found = new ArrayList<>();
        Optional<Instant> last = Optional.empty();
        long good = 0;
        for (FirstTests.Test test : tests) {
            if (!test.event()) {
                good++;
                continue;
            }
            if (last.isPresent()) {
                double days = Duration.between(last.get(), test.at()).toMinutes() / 1440.0;
                found.add(new Between(new Mark(clock.minute(test.at()), good + 1, 1), good, days));
            }
            last = Optional.of(test.at());
            good = 0;
        }
        return found;
    }

    private static Given gaps(Asked asked, List<Between> between) {
        return new Given(
                Map.of("chart", asked.kind().code()),
                Map.of(
                        "gaps",
                        table(
                                "gaps",
                                "gap",
                                between,
                                each -> asked.kind() == Kind.G ? String.valueOf(each.gap()) : number(each.days()))));
    }

    @Override
    public synchronized EntryRef base(TrendBase base, PersonId by, Optional<Passphrase> passphrase) {
        if (base.reason().isBlank()) {
            throw new BadInput(Complaint.of("reason", LedgerWords.get("trend.reason")));
        }
        Draft draft = new Draft(Draft.randomId(home.chance()), by, TrendBase.KIND, TrendBase.VERSION, base.body());
        Draft signed = authority.authorise(Act.BASE_TREND, draft, passphrase);
        if (cells(base.filter(), Events.INVALID).isEmpty()) {
            throw new Refusal("trend.nothing", LedgerWords.get("trend.nothing", base.from(), base.to()));
        }
        return journal.append(List.of(signed)).get(0).ref();
    }
}
