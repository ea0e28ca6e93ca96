package wickbench.stock.face;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import wickbench.api.lot.LotId;
import wickbench.stock.Companion;
import wickbench.stock.Delivery;
import wickbench.stock.Kit;
import wickbench.stock.Stockroom;
import wickbench.stock.gs1.Identifier;
import wickbench.stock.gs1.Scan;

/** A delivery as it was scanned and typed; what was not said is null, as the command line gives it. */
record Box(
        String scan,
        String kit,
        String lot,
        String expiry,
        Integer boxes,
        String at,
        String insert,
        String fridge,
        List<String> companions) {

    Delivery delivery(Stockroom room, Instant now) {
        Optional<Scan.Read> read =
                Scanned.certain(scan, LocalDate.ofInstant(now, room.zone()).getYear());
        List<Companion> liquids = companions.stream().map(Typed::companion).toList();
        return new Delivery(
                kitName(read, room),
                lotId(read),
                day(read),
                boxes == null ? 1 : boxes,
                at == null ? now : Typed.time("--at", at, room.zone()),
                Optional.ofNullable(insert),
                read.flatMap(found -> found.value(Identifier.SERIAL)),
                read.flatMap(found -> found.date(Identifier.PRODUCED)),
                Optional.ofNullable(fridge),
                liquids,
                read.map(found ->
                        scan.replaceAll("^[ \\t\\r\\n]+|[ \\t\\r\\n]+$", "").replace((char) 29, '\u241d')));
    }

    private String kitName(Optional<Scan.Read> read, Stockroom room) {
        Optional<String> gtin = read.flatMap(found -> found.value(Identifier.GTIN));
        Optional<String> known = gtin.flatMap(room::kitOf).map(Kit::name);
        if (kit == null) {
            return known.orElseThrow(() -> gtin.isEmpty()
                    ? Typed.wrong("--kit", "receive.which-kit")
                    : Typed.wrong("--scan", "receive.unknown-gtin", gtin.get()));
        }
        if (known.isPresent() && !known.get().equals(kit)) {
            throw Typed.wrong("--kit", "receive.differs", kit, known.get());
        }
        return kit;
    }

    private LotId lotId(Optional<Scan.Read> read) {
        return Typed.lot(one("--lot", lot, read.flatMap(found -> found.value(Identifier.LOT))));
    }

    /** The last day of use; a best-before date does where there is no expiry. */
    private LocalDate day(Optional<Scan.Read> read) {
        Optional<String> scanned = read.flatMap(
                        found -> found.date(Identifier.EXPIRY).or(() -> found.date(Identifier.BEST_BEFORE)))
                .map(LocalDate::toString);
        return Typed.date("--expiry", one("--expiry", expiry, scanned));
    }

    /** What was typed must be what was scanned. */
    private static String one(String field, String typed, Optional<String> scanned) {
        if (typed != null && scanned.isPresent() && !scanned.get().equals(typed)) {
            throw Typed.wrong(field, "receive.differs", typed, scanned.get());
        }
        return Optional.ofNullable(typed).or(() -> scanned).orElseThrow(() -> Typed.wrong(field, "receive.missing"));
    }
}
