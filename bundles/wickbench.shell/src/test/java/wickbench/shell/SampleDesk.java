package wickbench.shell;

import java.util.Map;

/** Places filled by hand, as the framework would. */
final class SampleDesk {
    private SampleDesk() {}

    static Places places() {
        Places places = new Places();
        place(places, "ledger", 20, "&Ledger");
        place(places, "bench", 10, "&Bench");
        place(places, "stockroom", 30, "&Stockroom");
        place(places, "methods", 40, "&Methods");
        return places;
    }

    static void place(Places places, String id, int rank, String title) {
        places.add(new SamplePage(title), Map.of(Page.ID, id, Page.RANK, rank));
    }
}
