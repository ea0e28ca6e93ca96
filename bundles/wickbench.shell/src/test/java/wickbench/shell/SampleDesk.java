package wickbench.shell;

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
        Offer.add(places, id, rank, new SamplePage(title));
    }
}
