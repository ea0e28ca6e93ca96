package wickbench.stock.room;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import wickbench.api.json.Json;
import wickbench.api.lot.LotId;
import wickbench.stock.Companion;
import wickbench.stock.LotCheck;

/** Writes bodies about lots; each has a schema {@code docs/formats/KIND-1.schema.json}. */
final class LotEventJson {
    static final String RECEIVED = "lot.received";
    static final String CHECKED = "lot.checked";
    static final String WAIVED = "lot.check-waived";
    static final String REJECTED = "lot.rejected";
    static final String QUARANTINED = "lot.quarantined";
    static final String RELEASED = "lot.released";
    static final String OPENED = "lot.opened";
    static final String TAKEN = "lot.taken";
    static final String COUNTED = "lot.counted";
    static final String PLACED = "lot.placed";
    static final String USED_UP = "lot.used-up";
    static final String DESTROYED = "lot.destroyed";
    static final int VERSION = 1;

    private static final DateTimeFormatter MILLIS =
            new DateTimeFormatterBuilder().appendInstant(3).toFormatter();

    private LotEventJson() {}

    static String kind(LotEvent event) {
        if (event instanceof LotEvent.Received) {
            return RECEIVED;
        } else if (event instanceof LotEvent.Checked) {
            return CHECKED;
        } else if (event instanceof LotEvent.Waived) {
            return WAIVED;
        } else if (event instanceof LotEvent.Rejected) {
            return REJECTED;
        } else if (event instanceof LotEvent.Quarantined) {
            return QUARANTINED;
        } else if (event instanceof LotEvent.Released) {
            return RELEASED;
        } else if (event instanceof LotEvent.Opened) {
            return OPENED;
        } else if (event instanceof LotEvent.Taken) {
            return TAKEN;
        } else if (event instanceof LotEvent.Counted) {
            return COUNTED;
        } else if (event instanceof LotEvent.Placed) {
            return PLACED;
        }
        return event instanceof LotEvent.UsedUp ? USED_UP : DESTROYED;
    }

    static Json.Obj write(LotEvent event) {
        Json.Obj body = Json.object().with("lot", event.lot().value()).with("at", time(event.at()));
        if (event instanceof LotEvent.Received received) {
            return received(received, body);
        } else if (event instanceof LotEvent.Checked checked) {
            return check(checked.check(), body);
        } else if (event instanceof LotEvent.Waived waived) {
            return body.with("reason", waived.reason());
        } else if (event instanceof LotEvent.Rejected rejected) {
            return body.with("since", time(rejected.since())).with("reason", rejected.reason());
        } else if (event instanceof LotEvent.Quarantined quarantined) {
            return body.with("cause", quarantined.cause().code())
                    .with("reason", quarantined.reason())
                    .withText("about", quarantined.about().map(UUID::toString));
        } else if (event instanceof LotEvent.Released released) {
            return body.with("quarantines", Json.texts(texts(released.quarantines())))
                    .withText("until", released.until().map(LocalDate::toString))
                    .with("reason", released.reason());
        } else if (event instanceof LotEvent.Counted counted) {
            return counted(counted, body);
        }
        return rest(event, body);
    }

    private static Json.Obj rest(LotEvent event, Json.Obj body) {
        if (event instanceof LotEvent.Opened opened) {
            return opened.with().isEmpty() ? body : body.with("with", lots(opened.with()));
        } else if (event instanceof LotEvent.Taken taken) {
            return body.with("part", taken.part())
                    .with("amount", taken.amount())
                    .with("reason", taken.reason());
        } else if (event instanceof LotEvent.Placed placed) {
            return body.with("place", placed.place());
        }
        return event instanceof LotEvent.Destroyed destroyed ? body.with("reason", destroyed.reason()) : body;
    }

    private static Json.Obj received(LotEvent.Received received, Json.Obj body) {
        Json.Obj more = body.with("kit", received.kit())
                .with("expiry", received.expiry().toString())
                .with("boxes", received.boxes())
                .withText("insert", received.insert())
                .withText("serial", received.serial())
                .withText("produced", received.produced().map(LocalDate::toString))
                .withText("place", received.place())
                .withText("scan", received.scan());
        Json.Obj compared =
                received.compared().isEmpty() ? more : more.with("insert_compared", Json.texts(received.compared()));
        return received.companions().isEmpty()
                ? compared
                : compared.with(
                        "companions",
                        Json.array(received.companions().stream()
                                .map(LotEventJson::companion)
                                .toList()));
    }

    private static Json.Obj companion(Companion companion) {
        return Json.object()
                .with("part", companion.part())
                .with("lot", companion.lot().value())
                .withText("expiry", companion.expiry().map(LocalDate::toString));
    }

    private static Json.Obj check(LotCheck check, Json.Obj body) {
        return body.with("passed", check.passed())
                .with("blanks", check.blanks())
                .with("low_positives", check.lowPositives())
                .with("wrong", check.wrong())
                .with("invalid", check.invalid())
                .with("readings", Json.texts(texts(check.readings())));
    }

    private static Json.Obj counted(LotEvent.Counted counted, Json.Obj body) {
        return body.with("pouches", counted.pouches())
                .with("loose", counted.loose())
                .with("others", amounts(counted.others()))
                .with("expected", amounts(counted.expected()))
                .withText("reason", counted.reason());
    }

    private static Json.Obj amounts(Map<String, BigDecimal> amounts) {
        Json.Obj object = Json.object();
        for (var each : new TreeMap<>(amounts).entrySet()) {
            object = object.with(each.getKey(), each.getValue());
        }
        return object;
    }

    private static Json.Obj lots(Map<String, LotId> lots) {
        Json.Obj object = Json.object();
        for (var each : new TreeMap<>(lots).entrySet()) {
            object = object.with(each.getKey(), each.getValue().value());
        }
        return object;
    }

    private static List<String> texts(List<UUID> ids) {
        return ids.stream().map(UUID::toString).toList();
    }

    static String time(Instant at) {
        return MILLIS.format(at);
    }

    /** Returns whether a kind of entry is about one lot. */
    static boolean isKind(String kind) {
        return kind.startsWith("lot.");
    }

    static Optional<LotEvent> read(String source, String kind, Json.Obj body) {
        return LotEventReader.read(source, kind, body);
    }
}
