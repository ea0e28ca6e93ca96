package wickbench.demo;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import wickbench.api.journal.Hash;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;

/**
 * A blind round of the demonstration: a panel of strips, its key, and what people call of them.
 *
 * @param near how many near-limit strips it has, each with a line
 */
record BlindRound(String id, int blanks, int near, int clear, int hook, int invalid) {
    static final int NEAR_MISSED = 1;
    static final int DEVELOP_SECONDS = 300;
    static final int WINDOW_SECONDS = 60;
    private static final String LETTERS = "BCDFGHJKMNPQRTVWXYZ2346789";
    private static final int CODE_LENGTH = 4;
    private static final int NONCE_BYTES = 32;

    /** A strip with its code. */
    record Strip(String code, String item, String kind) {}

    /** Codes in the order of reading, and the key that they hide. */
    record Drawn(List<Strip> strips, Json.Obj key) {
        String commitment() {
            return Hash.ofContent(key.canonical()).hex();
        }
    }

    int total() {
        return blanks + near + clear + hook + invalid;
    }

    private Map<String, Integer> counts() {
        Map<String, Integer> counts = new LinkedHashMap<>();
        counts.put("blank", blanks);
        counts.put("near-limit", near);
        counts.put("clear", clear);
        counts.put("hook", hook);
        counts.put("invalid", invalid);
        return counts;
    }

    Drawn drawn(Random random) {
        List<String[]> items = new ArrayList<>();
        counts().forEach((kind, count) -> {
            for (int i = 1; i <= count; i++) {
                items.add(new String[] {"panel A, " + kind + " " + i, kind});
            }
        });
        Collections.shuffle(items, random);
        List<Strip> strips = new ArrayList<>();
        for (String[] item : items) {
            strips.add(new Strip(code(random, strips), item[0], item[1]));
        }
        byte[] nonce = new byte[NONCE_BYTES];
        random.nextBytes(nonce);
        Json.Obj key = Json.object()
                .with("round", id)
                .with("nonce", HexFormat.of().formatHex(nonce))
                .with(
                        "strips",
                        Json.array(strips.stream().map(BlindRound::sealed).toList()));
        return new Drawn(strips, key);
    }

    private static Json.Obj sealed(Strip strip) {
        Json.Obj sealed = Json.object()
                .with("code", strip.code())
                .with("item", strip.item())
                .with("class", strip.kind());
        return strip.kind().equals("near-limit") ? sealed.with("line", true) : sealed;
    }

    private static String code(Random random, List<Strip> before) {
        StringBuilder code = new StringBuilder();
        for (int i = 0; i < CODE_LENGTH; i++) {
            code.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
        }
        boolean used = before.stream().anyMatch(strip -> strip.code().contentEquals(code));
        return used ? code(random, before) : code.toString();
    }

    Json.Obj opened(Instant at, List<PersonId> readers, Drawn drawn) {
        Json.Obj strips = Json.object();
        for (Map.Entry<String, Integer> each : counts().entrySet()) {
            strips = strips.with(each.getKey(), each.getValue());
        }
        return Json.object()
                .with("round", id)
                .with("at", StockEntries.time(at))
                .with("method", "hazelnut-swab-dry")
                .with("format", "sandwich-hook")
                .with("develop_s", DEVELOP_SECONDS)
                .with("window_s", WINDOW_SECONDS)
                .with("strips", strips)
                .with(
                        "rule",
                        Json.object()
                                .with("near_missed", NEAR_MISSED)
                                .with("clear_missed", 0)
                                .with("false_alarms", 0)
                                .with("invalid_missed", 0)
                                .with("outside_window", 1))
                .with("readers", people(readers))
                .with("experts", people(List.of()))
                .with("key_known", true)
                .with(
                        "key_by",
                        "Panel A of the central laboratory: prepared, then read blind by two experts in the window.")
                .with(
                        "codes",
                        Json.texts(drawn.strips().stream().map(Strip::code).toList()))
                .with("commitment", drawn.commitment());
    }

    /**
     * Returns what one reader called.
     *
     * @param missed how many of the near-limit lines they did not see
     */
    Json.Obj called(Instant at, PersonId reader, Drawn drawn, int missed) {
        List<Json.Obj> calls = new ArrayList<>();
        int left = missed;
        Instant started = at.minus(
                Duration.ofSeconds(DEVELOP_SECONDS + 30L + 25L * drawn.strips().size()));
        for (Strip strip : drawn.strips()) {
            boolean overlooked = strip.kind().equals("near-limit") && left > 0;
            left -= overlooked ? 1 : 0;
            calls.add(call(strip, overlooked, started));
            started = started.plusSeconds(25);
        }
        return Json.object()
                .with("round", id)
                .with("at", StockEntries.time(at))
                .with("person", reader.value())
                .with("sheet", id + "-" + reader + ".csv")
                .with("calls", Json.array(calls));
    }

    private static Json.Obj call(Strip strip, boolean overlooked, Instant started) {
        String test = switch (strip.kind()) {
            case "near-limit" -> overlooked ? "not-seen" : "faint";
            case "clear", "hook" -> "seen";
            default -> "not-seen";
        };
        String outcome = switch (strip.kind()) {
            case "near-limit" -> overlooked ? "negative" : "positive";
            case "clear" -> "positive";
            case "hook" -> "positive-above-range";
            case "invalid" -> "invalid";
            default -> "negative";
        };
        return Json.object()
                .with("code", strip.code())
                .with(
                        "lines",
                        Json.object()
                                .with("control", strip.kind().equals("invalid") ? "not-seen" : "seen")
                                .with("hook", strip.kind().equals("hook") ? "not-seen" : "seen")
                                .with("test", test))
                .with("outcome", outcome)
                .with("started", StockEntries.time(started))
                .with("read", StockEntries.time(started.plusSeconds(DEVELOP_SECONDS + 20L)));
    }

    Json.Obj closed(Instant at, Drawn drawn) {
        return Json.object()
                .with("round", id)
                .with("at", StockEntries.time(at))
                .with("key", drawn.key())
                .with("without", people(List.of()));
    }

    private static Json.Arr people(List<PersonId> people) {
        return Json.texts(people.stream().map(PersonId::value).toList());
    }
}
