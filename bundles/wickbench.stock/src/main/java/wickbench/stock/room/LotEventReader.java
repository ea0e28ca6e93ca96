package wickbench.stock.room;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Supplier;
import wickbench.api.authority.Signature;
import wickbench.api.doubt.Doubt;
import wickbench.api.doubt.Trust;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.lot.LotId;
import wickbench.api.words.Coded;
import wickbench.stock.Cause;
import wickbench.stock.Companion;
import wickbench.stock.LotCheck;

/** Reads bodies about lots. */
final class LotEventReader {
    private final Fields fields;

    private LotEventReader(Fields fields) {
        this.fields = fields;
        fields.has(Signature.MEMBER);
        fields.has(Signature.WITNESS);
        // for those who keep results; what is in doubt follows from the rest of the body
        fields.has(Doubt.MEMBER);
        fields.has(Trust.MEMBER);
    }

    /** Returns what a body says; empty when this program knows no such kind. */
    static Optional<LotEvent> read(String source, String kind, Json.Obj body) {
        LotEventReader reader = new LotEventReader(Fields.of(source, body));
        Supplier<LotEvent> build = reader.event(kind);
        return build == null
                ? Optional.empty()
                : Optional.of(reader.fields.<LotEvent>finish(build).orRefuse());
    }

    private Supplier<LotEvent> event(String kind) {
        LotId lot = needed("lot", LotId::new, new LotId("?"));
        Instant at = instant("at");
        return switch (kind) {
            case LotEventJson.RECEIVED -> received(lot, at);
            case LotEventJson.CHECKED -> checked(lot, at);
            case LotEventJson.COUNTED -> counted(lot, at);
            case LotEventJson.QUARANTINED -> quarantined(lot, at);
            case LotEventJson.RELEASED -> released(lot, at);
            case LotEventJson.TAKEN -> taken(lot, at);
            case LotEventJson.WAIVED -> reasoned(reason -> new LotEvent.Waived(lot, at, reason));
            case LotEventJson.DESTROYED -> reasoned(reason -> new LotEvent.Destroyed(lot, at, reason));
            case LotEventJson.REJECTED -> {
                Instant since = instant("since");
                yield reasoned(reason -> new LotEvent.Rejected(lot, at, since, reason));
            }
            case LotEventJson.OPENED -> {
                Map<String, LotId> with = lots("with");
                yield () -> new LotEvent.Opened(lot, at, with);
            }
            case LotEventJson.PLACED -> {
                String place = fields.text("place");
                yield () -> new LotEvent.Placed(lot, at, place);
            }
            case LotEventJson.USED_UP -> () -> new LotEvent.UsedUp(lot, at);
            default -> null;
        };
    }

    private Supplier<LotEvent> reasoned(Function<String, LotEvent> build) {
        String reason = fields.text("reason");
        return () -> build.apply(reason);
    }

    private Supplier<LotEvent> received(LotId lot, Instant at) {
        String kit = fields.text("kit");
        LocalDate expiry = needed("expiry", LotEventReader::date, LocalDate.MIN);
        int boxes = (int) fields.whole("boxes");
        Optional<String> insert = fields.optionalText("insert");
        List<String> compared = fields.texts("insert_compared");
        Optional<String> serial = fields.optionalText("serial");
        Optional<LocalDate> produced = fields.optional("produced", LotEventReader::date);
        Optional<String> place = fields.optionalText("place");
        List<Companion> companions = fields.children("companions").stream()
                .map(LotEventReader::companion)
                .toList();
        Optional<String> scan = fields.optionalText("scan");
        return () -> new LotEvent.Received(
                lot, at, kit, expiry, boxes, insert, compared, serial, produced, place, companions, scan);
    }

    private static Companion companion(Fields fields) {
        LotEventReader reader = new LotEventReader(fields);
        return new Companion(
                fields.text("part"),
                reader.needed("lot", LotId::new, new LotId("?")),
                fields.optional("expiry", LotEventReader::date));
    }

    private Supplier<LotEvent> checked(LotId lot, Instant at) {
        LotCheck check = new LotCheck(
                (int) fields.whole("blanks"),
                (int) fields.whole("low_positives"),
                (int) fields.whole("wrong"),
                (int) fields.whole("invalid"),
                fields.flag("passed"),
                ids("readings"));
        return () -> new LotEvent.Checked(lot, at, check);
    }

    private Supplier<LotEvent> counted(LotId lot, Instant at) {
        int pouches = (int) fields.whole("pouches");
        int loose = (int) fields.whole("loose");
        Map<String, BigDecimal> others = amounts("others");
        Map<String, BigDecimal> expected = amounts("expected");
        Optional<String> reason = fields.optionalText("reason");
        return () -> new LotEvent.Counted(lot, at, pouches, loose, others, expected, reason);
    }

    private Supplier<LotEvent> quarantined(LotId lot, Instant at) {
        Cause cause = needed("cause", code -> Coded.of(Cause.class, code), Cause.STATED);
        Optional<UUID> about = fields.optional("about", UUID::fromString);
        return reasoned(reason -> new LotEvent.Quarantined(lot, at, cause, reason, about));
    }

    private Supplier<LotEvent> released(LotId lot, Instant at) {
        List<UUID> quarantines = ids("quarantines");
        Optional<LocalDate> until = fields.optional("until", LotEventReader::date);
        return reasoned(reason -> new LotEvent.Released(lot, at, quarantines, until, reason));
    }

    private Supplier<LotEvent> taken(LotId lot, Instant at) {
        String part = fields.text("part");
        BigDecimal amount = fields.decimal("amount");
        return reasoned(reason -> new LotEvent.Taken(lot, at, part, amount, reason));
    }

    private Map<String, LotId> lots(String name) {
        Map<String, LotId> lots = new TreeMap<>();
        fields.optionalChild(name)
                .ifPresent(child -> child.names()
                        .forEach(part -> child.optional(part, LotId::new).ifPresent(lot -> lots.put(part, lot))));
        return lots;
    }

    private Map<String, BigDecimal> amounts(String name) {
        Fields child = fields.child(name);
        Map<String, BigDecimal> amounts = new TreeMap<>();
        child.names().forEach(part -> amounts.put(part, child.decimal(part)));
        return amounts;
    }

    private List<UUID> ids(String name) {
        try {
            return fields.texts(name).stream().map(UUID::fromString).toList();
        } catch (IllegalArgumentException e) {
            fields.complain(name, "expected ids of entries");
            return List.of();
        }
    }

    private Instant instant(String name) {
        fields.text(name);
        return fields.optionalInstant(name).orElse(Instant.EPOCH);
    }

    private <T> T needed(String name, Function<String, T> parse, T standIn) {
        fields.text(name);
        return fields.optional(name, parse).orElse(standIn);
    }

    static LocalDate date(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException("expected a date such as 2026-03-31, found '" + text + "'", e);
        }
    }
}
