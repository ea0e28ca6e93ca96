package wickbench.stock;

import java.time.LocalDate;
import wickbench.api.words.Words;
import wickbench.stock.gs1.Doubt;

/** How states, causes and acts of the stock room are called on every page, command and report. */
public final class StockTerms {
    private StockTerms() {}

    /** Returns the state of a lot; one that could still be used is called out of date when it is. */
    public static String state(LotState state, boolean expired) {
        return get("state." + (expired && state.kept() ? "expired" : state.code()));
    }

    public static String cause(Cause cause) {
        return get("cause." + cause.code());
    }

    /** Returns what was done, by the kind of its entry. */
    public static String act(String kind) {
        return get("kind." + kind);
    }

    public static String type(Device.Type type) {
        return get("device." + type.code());
    }

    /** Returns whether equipment is in date, overdue, or out of use. */
    public static String standing(Device device, LocalDate today) {
        if (device.retired().isPresent()) {
            return get("device.retired");
        }
        return get(device.overdue(today) ? "device.overdue" : "device.good");
    }

    /** Returns what somebody must see to. */
    public static String due(Due due) {
        return get("due." + due.what().code(), due.about(), due.fact());
    }

    /** Returns what an entry claims of a lot, and what stands against it. */
    public static String clash(Clash clash) {
        return switch (clash.code()) {
            case "move" ->
                get("clash.move", clash.entry(), get("move." + clash.claimed()), get("state." + clash.stands()));
            case "not-received" -> get("clash.not-received", clash.entry(), act(clash.claimed()));
            case "strips" -> get("clash.strips", clash.entry(), clash.claimed());
            default -> get("clash.kit", clash.entry(), clash.claimed(), clash.stands());
        };
    }

    /** Returns why a scanned text cannot be taken as it stands. */
    public static String doubt(Doubt doubt) {
        return get("scan." + doubt.code(), doubt.at() + 1, doubt.fact());
    }

    /** Returns what governs beside what is shown. */
    public static String caution() {
        return get("caution");
    }

    /** Returns what a mean kinetic temperature does not excuse. */
    public static String kineticCaution() {
        return get("fridge.caution");
    }

    /** Returns how the outlook is reckoned. */
    public static String outlookHow() {
        return get("outlook.how");
    }

    /** Looked up anew each time, because the user may change the language. */
    private static String get(String key, Object... values) {
        return Words.of(StockTerms.class, "stock").get(key, values);
    }
}
