package wickbench.stock.room;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.authority.Signature;
import wickbench.api.doubt.Doubt;
import wickbench.api.doubt.Trust;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Journal;
import wickbench.api.json.Json;
import wickbench.api.lot.LotFacts;
import wickbench.api.lot.LotId;
import wickbench.api.lot.Lots;
import wickbench.stock.Device;
import wickbench.stock.Due;
import wickbench.stock.Happening;
import wickbench.stock.Kit;
import wickbench.stock.Lot;
import wickbench.stock.Outlook;
import wickbench.stock.Stockroom;
import wickbench.stock.Trace;
import wickbench.stock.Use;

/** Answers for the stock room. */
@Component(service = {Stockroom.class, Lots.class})
public final class Room implements Stockroom, Lots {
    /** Told apart from the other facts of a happening, or for other readers. */
    private static final Set<String> ELSEWHERE = Set.of("lot", "at", Signature.MEMBER, Doubt.MEMBER, Trust.MEMBER);

    private final Shelves shelves;
    private final Journal journal;

    @Activate
    public Room(@Reference Shelves shelves, @Reference Journal journal) {
        this.shelves = shelves;
        this.journal = journal;
    }

    @Override
    public List<Kit> kits() {
        return shelves.read(List.of(), events -> events.kits().newest());
    }

    @Override
    public Optional<Kit> kit(String name) {
        return kits().stream().filter(kit -> kit.name().equals(name)).findFirst();
    }

    @Override
    public Optional<Kit> kitOf(String gtin) {
        return kits().stream().filter(kit -> kit.gtins().contains(gtin)).findFirst();
    }

    @Override
    public List<String> inserts(String kit) {
        return shelves.inserts(kit, shelves.now());
    }

    @Override
    public List<Lot> lots(Instant at) {
        return shelves.lots(at);
    }

    @Override
    public Optional<Lot> lot(LotId id, Instant at) {
        return shelves.lot(id, at);
    }

    @Override
    public Optional<LotFacts> asOf(LotId lot, Instant instant) {
        return shelves.lot(lot, instant).map(Room::facts);
    }

    @Override
    public List<LotFacts> fitFor(String kit, Instant instant) {
        LocalDate day = LocalDate.ofInstant(instant, zone());
        return shelves.lots(instant).stream()
                .filter(lot -> lot.kit().name().equals(kit) && lot.usable(day))
                .filter(lot -> lot.strips().left().signum() > 0)
                .map(Room::facts)
                .toList();
    }

    private static LotFacts facts(Lot lot) {
        return new LotFacts(
                lot.id(),
                lot.kit().name(),
                lot.label(),
                lot.effective(),
                lot.state().code(),
                lot.insert());
    }

    @Override
    public List<Unreceived> unreceived() {
        List<LotId> received =
                shelves.read(List.of(), events -> List.copyOf(events.lots().keySet()));
        Map<LotId, List<Use>> uses = shelves.uses("lot not in (select subject from lot_event) order by taken").stream()
                .filter(use -> !received.contains(use.lot()))
                .collect(Collectors.groupingBy(Use::lot, LinkedHashMap::new, Collectors.toList()));
        return uses.values().stream()
                .map(of -> new Unreceived(
                        of.get(0).lot(),
                        of.get(0).kit(),
                        of.size(),
                        of.get(0).taken(),
                        of.get(of.size() - 1).taken()))
                .toList();
    }

    @Override
    public List<EntryRef> clashing(LotId id) {
        return shelves.clashing(id);
    }

    @Override
    public List<Happening> history(LotId id) {
        List<Told> told = shelves.read(List.of(), events -> events.lot(id));
        return told.stream().sorted(Told.IN_ORDER).map(this::happening).toList();
    }

    private Happening happening(Told told) {
        Entry entry = journal.entry(told.entry())
                .orElseThrow(() -> new IllegalStateException(told.entry() + " is in the index and not in the journal"));
        Map<String, String> facts = new LinkedHashMap<>();
        entry.body().members().forEach((name, value) -> {
            if (!ELSEWHERE.contains(name)) {
                facts.put(name, plain(value));
            }
        });
        return new Happening(entry, told.event().at(), told.signed(), facts);
    }

    private static String plain(Json value) {
        if (value instanceof Json.Arr list) {
            return list.items().stream().map(Room::plain).collect(Collectors.joining(" / "));
        }
        return value instanceof Json.Text text ? text.value() : value.canonical();
    }

    @Override
    public Trace trace(LotId id) {
        return new Trace(lot(id, shelves.now()), shelves.uses("lot = ? order by taken, station, seq", id.value()));
    }

    @Override
    public Optional<Trace> behind(UUID result) {
        return shelves.uses("result = ?", result).stream()
                .findFirst()
                .map(use -> new Trace(lot(use.lot(), shelves.now()), List.of(use)));
    }

    @Override
    public List<Due> due(Instant now, int days) {
        return new Dues(zone(), LocalDate.ofInstant(now, zone()), days)
                .of(
                        lots(now),
                        outlook(now),
                        equipment(),
                        shelves.read(List.of(), FridgeRows::heard),
                        unreceived(),
                        shelves.clashing());
    }

    @Override
    public List<Outlook> outlook(Instant now) {
        ZoneId zone = zone();
        LocalDate today = LocalDate.ofInstant(now, zone);
        List<Lot> lots = lots(now);
        return kits().stream()
                .map(kit -> Outlooks.of(kit, lots, Demand.of(demand(kit, now), today, zone), today))
                .toList();
    }

    private List<Instant> demand(Kit kit, Instant now) {
        return shelves
                .uses(
                        "kit = ? and taken > ? and taken <= ? order by taken",
                        kit.name(),
                        now.minus(java.time.Duration.ofDays(Demand.DAYS)),
                        now)
                .stream()
                .map(Use::taken)
                .toList();
    }

    @Override
    public List<Device> equipment() {
        return shelves.read(List.<Device>of(), DeviceRows::all).stream()
                .sorted(Comparator.comparing((Device device) -> device.retired().isPresent())
                        .thenComparing(Device::due)
                        .thenComparing(Device::id))
                .toList();
    }

    @Override
    public ZoneId zone() {
        return shelves.zone();
    }
}
