package wickbench.ledger.pack;

import java.util.Arrays;
import java.util.List;
import wickbench.api.words.Coded;

/** The sorts of records that are kept for a time of their own. */
enum Records implements Coded {
    /** Strips as read, corrected and reviewed. */
    RESULTS("reading.", "run.", "retest.", "visual.", "clean."),
    /** What was decided, owed, released, and reported by others. */
    ACTIONS("action.", "owed.", "release.", "outside.", "pack.", "trend."),
    /** Methods and the studies behind them: their time begins when they are used no more. */
    METHODS("method.", "figure."),
    /** Lots, fridges, equipment. */
    STOCK("lot.", "kit.", "fridge.", "device."),
    /** What people have shown, and may do. */
    TRAINING("training.", "round.", "drill."),
    /** Everything else: people, the plant, stations, files. */
    HOUSE("");

    private final List<String> beginnings;

    Records(String... beginnings) {
        this.beginnings = List.of(beginnings);
    }

    static Records of(String kind) {
        return Arrays.stream(values())
                .filter(each -> each.beginnings.stream().anyMatch(kind::startsWith))
                .findFirst()
                .orElseThrow();
    }

    /** Tells whether these are in use, so that their time has not begun (21 CFR 117.315(b)). */
    boolean inUse() {
        return this == METHODS || this == HOUSE;
    }
}
