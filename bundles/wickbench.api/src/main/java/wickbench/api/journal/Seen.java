package wickbench.api.journal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;

/**
 * How much of another station's journal a station had taken in, said in its own journal before what it recorded next.
 *
 * <p>Entries of kind {@code station.seen} tell what an act could have known, and make each station a witness of the others: who
 * wants to change what was seen has to change every journal that says so. The schema is
 * {@code docs/formats/station.seen-1.schema.json}.
 *
 * @param station the other station
 * @param size how many of its entries
 * @param leaf leaf hash of the last of them, which stands for all before it
 */
public record Seen(StationId station, long size, Hash leaf) {
    public static final String KIND = "station.seen";
    public static final int VERSION = 1;

    /** Returns the body that says so of some stations. */
    public static Json.Obj body(List<Seen> seen) {
        return Json.object()
                .with(
                        "seen",
                        Json.array(seen.stream()
                                .map(each -> (Json) Json.object()
                                        .with("station", each.station().value())
                                        .with("size", each.size())
                                        .with("leaf", each.leaf().hex()))
                                .toList()));
    }

    /** Returns what an entry says was seen; empty when it is of another kind or version. */
    public static List<Seen> of(Entry entry) {
        List<Seen> all = new ArrayList<>();
        if (entry.is(KIND, VERSION) && entry.body().get("seen").orElse(Json.Null.NULL) instanceof Json.Arr stations) {
            stations.items().forEach(item -> read(entry, item).ifPresent(all::add));
        }
        return all;
    }

    private static Optional<Seen> read(Entry entry, Json item) {
        if (!(item instanceof Json.Obj object)) {
            return Optional.empty();
        }
        Fields fields = Fields.of(entry.ref().toString(), object);
        Optional<StationId> station = fields.optional("station", StationId::new);
        Optional<Hash> leaf = fields.optional("leaf", Hash::new);
        long size = fields.whole("size");
        return station.isPresent() && leaf.isPresent()
                ? Optional.of(new Seen(station.get(), size, leaf.get()))
                : Optional.empty();
    }
}
