package wickbench.ledger.services;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
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
import wickbench.figures.sums.Reckoned;
import wickbench.ledger.Filter;
import wickbench.ledger.desk.Bases;
import wickbench.ledger.services.TrendCounts.Between;
import wickbench.ledger.services.TrendQuestion.Material;
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
        TrendCounts counts = new TrendCounts(index, site.now().zone(), asked.events());
        List<Cell> cells = counts.cells(asked.filter());
        Optional<TrendBase> base = new Bases(index, journal).of(TrendBase.scope(asked.filter()));
        Material shown = material(counts, cells, asked.kind(), asked.filter());
        Optional<Material> over =
                base.map(period -> material(counts, counts.cells(period.filter()), asked.kind(), period.filter()));
        Reckoned reckoned = new TrendQuestion(asked.kind()).ask(shown, over);
        return new Trend(
                asked,
                asked.kind().byWeek()
                        ? shown.weeks()
                        : shown.between().stream().map(Between::mark).toList(),
                base,
                reckoned instanceof Reckoned.Done done ? Optional.of(done.answer()) : Optional.empty(),
                reckoned instanceof Reckoned.Wrong wrong
                        ? Optional.of(wrong.complaint().oneLine())
                        : Optional.empty(),
                TrendCounts.ranked(cells, Cell::place),
                TrendCounts.ranked(cells, Cell::line),
                counts.by("method", asked.filter()),
                counts.by("target", asked.filter()),
                cells);
    }

    @Override
    public List<Behind> behind(Asked asked, Optional<LocalDate> monday, Optional<String> place) {
        return new TrendCounts(index, site.now().zone(), asked.events()).behind(asked.filter(), monday, place);
    }

    private static Material material(TrendCounts counts, List<Cell> cells, Kind kind, Filter filter) {
        return kind.byWeek()
                ? new Material(TrendCounts.weeks(cells), List.of())
                : new Material(List.of(), counts.between(filter));
    }

    @Override
    public synchronized EntryRef base(TrendBase base, PersonId by, Optional<Passphrase> passphrase) {
        if (base.reason().isBlank()) {
            throw new BadInput(Complaint.of("reason", LedgerWords.get("trend.reason")));
        }
        Draft draft = new Draft(Draft.randomId(home.chance()), by, TrendBase.KIND, TrendBase.VERSION, base.body());
        Draft signed = authority.authorise(Act.BASE_TREND, draft, passphrase);
        if (new TrendCounts(index, site.now().zone(), Events.INVALID)
                .cells(base.filter())
                .isEmpty()) {
            throw new Refusal("trend.nothing", LedgerWords.get("trend.nothing", base.from(), base.to()));
        }
        return journal.append(List.of(signed)).get(0).ref();
    }
}
