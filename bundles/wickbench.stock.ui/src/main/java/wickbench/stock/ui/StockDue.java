package wickbench.stock.ui;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.home.Home;
import wickbench.shell.Due;
import wickbench.shell.DueSource;
import wickbench.stock.Due.What;
import wickbench.stock.Stockroom;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.Shape;

/** What the stock room wants to be seen to now: of each sort one mark, the most urgent sorts first. */
@Component
public final class StockDue implements DueSource {
    private static final String PAGE = "stock";

    /** The bar has room for a few things of everybody. */
    private static final int MOST = 3;

    /** What lies farther ahead stands on the page only. */
    private static final int DAYS = 7;

    private final Home home;
    private final Stockroom room;

    @Activate
    public StockDue(@Reference Home home, @Reference Stockroom room) {
        this.home = home;
        this.room = room;
    }

    @Override
    public List<Due> due() {
        if (!home.isBegun()) {
            return List.of();
        }
        Instant now = home.clock().instant();
        return marks(room.due(now, DAYS), LocalDate.ofInstant(now, room.zone()));
    }

    /** @param all most urgent first */
    static List<Due> marks(List<wickbench.stock.Due> all, LocalDate today) {
        Map<What, List<wickbench.stock.Due>> sorts = new EnumMap<>(What.class);
        all.forEach(due ->
                sorts.computeIfAbsent(due.what(), what -> new ArrayList<>()).add(due));
        return sorts.values().stream()
                .map(sort -> mark(sort, today))
                .limit(MOST)
                .toList();
    }

    private static Due mark(List<wickbench.stock.Due> sort, LocalDate today) {
        What what = sort.get(0).what();
        Optional<String> one = Optional.of(sort.get(0).subject()).filter(subject -> sort.size() == 1);
        String words = one.map(subject -> StockUiWords.get("due.one." + what.code(), subject))
                .orElseGet(() -> StockUiWords.get("due.some." + what.code(), sort.size()));
        boolean late = sort.get(0).day().isBefore(today);
        return new Due(look(what, late, words), PAGE, where(what, one));
    }

    /** What must not wait stands before what can; a strip to be read now is not the stock room's to tell. */
    private static Mark look(What what, boolean late, String words) {
        Mark waits =
                late ? new Mark(words, Shape.TRIANGLE, Meaning.CAUTION) : new Mark(words, Shape.SQUARE, Meaning.NOTICE);
        return switch (what) {
            case OUTSIDE -> new Mark(words, Shape.TRIANGLE, Meaning.ALARM);
            case DECIDE, SETTLE, EXPIRED, COUNT, CHECK -> new Mark(words, Shape.TRIANGLE, Meaning.CAUTION);
            case CALIBRATE, ORDER -> waits;
            case INSERT, EXPIRES, LOGGER -> new Mark(words, Shape.SQUARE, Meaning.NOTICE);
        };
    }

    /** The tab, and the thing on it where it is one alone. */
    private static String where(What what, Optional<String> one) {
        Tab tab = switch (what) {
            case OUTSIDE, LOGGER -> Tab.FRIDGES;
            case CALIBRATE -> Tab.EQUIPMENT;
            case ORDER -> Tab.OUTLOOK;
            case DECIDE, SETTLE, EXPIRED, COUNT, CHECK, INSERT, EXPIRES -> Tab.LOTS;
        };
        return one.map(subject -> tab.code() + ":" + subject).orElseGet(tab::code);
    }
}
