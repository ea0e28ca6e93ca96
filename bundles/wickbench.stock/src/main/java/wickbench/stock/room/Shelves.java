package wickbench.stock.room;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.home.Home;
import wickbench.api.index.Index;
import wickbench.api.journal.EntryRef;
import wickbench.api.lot.LotId;
import wickbench.api.profile.SiteFacts;
import wickbench.api.profile.SiteProfile;
import wickbench.stock.Clash;
import wickbench.stock.Lot;

/** Reads lots as they stood; what the services of this bundle stand on. */
@Component(service = Shelves.class)
public final class Shelves {
    static final Comparator<Lot> FIRST_EXPIRED_FIRST = Comparator.comparing(
                    (Lot lot) -> lot.state().kept() ? 0 : 1)
            .thenComparing(Lot::effective)
            .thenComparing(Lot::received)
            .thenComparing(lot -> lot.id().value());

    private final Home home;
    private final Index index;
    private final SiteFacts site;
    private final SiteProfile profile;
    private final Parsed parsed = new Parsed();

    @Activate
    public Shelves(
            @Reference Home home, @Reference Index index, @Reference SiteFacts site, @Reference SiteProfile profile) {
        this.home = home;
        this.index = index;
        this.site = site;
        this.profile = profile;
    }

    <T> T read(T unfounded, Function<Events, T> work) {
        return home.isBegun() ? index.read(StockView.NAME, rows -> work.apply(new Events(rows, parsed))) : unfounded;
    }

    /** Reads strips that were read. */
    List<wickbench.stock.Use> uses(String condition, Object... values) {
        return home.isBegun() ? index.read(StockView.NAME, rows -> StripRows.read(rows, condition, values)) : List.of();
    }

    Optional<Lot> lot(LotId id, Instant at) {
        return read(Optional.empty(), events -> lot(events, id, at));
    }

    private Optional<Lot> lot(Events events, LotId id, Instant at) {
        List<Told> told = events.lot(id);
        return told.isEmpty() ? Optional.empty() : new LotFold(terms(events, at)).at(id, told, events.uses(id), at);
    }

    List<Lot> lots(Instant at) {
        return read(List.of(), events -> {
            LotFold fold = new LotFold(terms(events, at));
            Map<LotId, List<Told>> lots = events.lots();
            return lots.entrySet().stream()
                    .flatMap(each -> fold.at(each.getKey(), each.getValue(), events.uses(each.getKey()), at).stream())
                    .sorted(FIRST_EXPIRED_FIRST)
                    .toList();
        });
    }

    private Terms terms(Events events, Instant at) {
        return new Terms(events.kits(), events.inserts(), waiving(at), zone());
    }

    /** Returns decisions on a lot that stand against one another. */
    List<EntryRef> clashing(LotId id) {
        return home.isBegun()
                ? index.clash(Clash.subject(id)).map(clash -> clash.decisions()).orElse(List.of())
                : List.of();
    }

    /** Returns the lots on which stations decided differently. */
    Set<LotId> clashing() {
        return home.isBegun()
                ? index.clashes().stream()
                        .flatMap(clash -> Clash.lot(clash.subject()).stream())
                        .collect(Collectors.toSet())
                : Set.of();
    }

    /** Returns the revisions of the insert by which the methods of a kit were written at an instant. */
    List<String> inserts(String kit, Instant at) {
        return read(
                List.of(),
                events -> events.kits()
                        .at(kit, at)
                        .map(defined -> events.inserts().of(defined, at))
                        .orElse(List.of()));
    }

    /** Returns which checks could be waived at an instant. */
    Waiving waiving(Instant at) {
        return new Waiving(profile.inForce(at));
    }

    Instant now() {
        return home.clock().instant();
    }

    /** By which days begin here. */
    ZoneId zone() {
        return home.isBegun() ? site.now().zone() : ZoneId.of("UTC");
    }
}
