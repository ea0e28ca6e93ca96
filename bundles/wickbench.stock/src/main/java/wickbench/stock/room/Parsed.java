package wickbench.stock.room;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import wickbench.api.journal.EntryRef;

/** What entries say, parsed once: an entry never changes. The bench asks of the same lots strip after strip. */
final class Parsed {
    private static final int MOST = 50_000;
    private static final float LOAD = 0.75f;

    private final Map<EntryRef, Object> known = new LinkedHashMap<>(MOST / 8, LOAD, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<EntryRef, Object> eldest) {
            return size() > MOST;
        }
    };

    /**
     * @param type of what {@code parse} makes; an entry is asked for by one type only
     */
    synchronized <T> T of(EntryRef entry, Class<T> type, Supplier<T> parse) {
        return type.cast(known.computeIfAbsent(entry, ref -> parse.get()));
    }
}
