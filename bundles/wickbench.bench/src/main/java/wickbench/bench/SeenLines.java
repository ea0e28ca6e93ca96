package wickbench.bench;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import wickbench.api.method.Format;
import wickbench.api.method.LineRole;
import wickbench.api.method.Seen;
import wickbench.api.reading.Strip;
import wickbench.api.words.Coded;

/** Reads which lines were seen: roles separated by blanks, {@code ~test} faint, {@code !test} damaged, unnamed not seen. */
final class SeenLines {
    private SeenLines() {}

    /**
     * Reads the lines of a strip of the given format.
     *
     * @throws IllegalArgumentException for a line the strip does not have, or one named twice
     */
    static Strip parse(Format format, String text) {
        Map<LineRole, Seen> lines = new EnumMap<>(LineRole.class);
        for (String word : text.toLowerCase(Locale.ROOT).split("\\s+")) {
            if (!word.isEmpty()) {
                put(lines, format, word);
            }
        }
        format.lines().forEach(line -> lines.putIfAbsent(line, Seen.NOT_SEEN));
        return new Strip(format, lines);
    }

    private static void put(Map<LineRole, Seen> lines, Format format, String word) {
        Seen seen = word.startsWith("~") ? Seen.FAINT : word.startsWith("!") ? Seen.DAMAGED : Seen.SEEN;
        LineRole role = Coded.of(LineRole.class, seen == Seen.SEEN ? word : word.substring(1));
        if (!format.lines().contains(role)) {
            throw new IllegalArgumentException(BenchWords.get("seen.no-such-line", format.code(), role.code()));
        }
        if (lines.put(role, seen) != null) {
            throw new IllegalArgumentException(BenchWords.get("seen.twice", role.code()));
        }
    }
}
