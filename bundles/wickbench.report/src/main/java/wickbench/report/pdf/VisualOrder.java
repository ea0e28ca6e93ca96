package wickbench.report.pdf;

import java.text.Bidi;
import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/** Puts the characters of a line in the order in which they stand on paper (Unicode Standard Annex 9). */
final class VisualOrder {
    private static final String OPEN = "([{<«‹";
    private static final String CLOSE = ")]}>»›";

    private VisualOrder() {}

    static String of(String line) {
        if (!Bidi.requiresBidi(line.toCharArray(), 0, line.length())) {
            return line;
        }
        Bidi bidi = new Bidi(line, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
        int count = bidi.getRunCount();
        byte[] levels = new byte[count];
        Object[] runs = new Object[count];
        for (int i = 0; i < count; i++) {
            levels[i] = (byte) bidi.getRunLevel(i);
            String run = line.substring(bidi.getRunStart(i), bidi.getRunLimit(i));
            runs[i] = levels[i] % 2 == 0 ? run : mirrored(run);
        }
        Bidi.reorderVisually(levels, 0, runs, 0, count);
        StringBuilder out = new StringBuilder(line.length());
        for (Object run : runs) {
            out.append(run);
        }
        return out.toString();
    }

    /** Turns a run round, character by character as people count them. */
    private static String mirrored(String run) {
        BreakIterator characters = BreakIterator.getCharacterInstance(Locale.ROOT);
        characters.setText(run);
        List<String> all = new ArrayList<>();
        int from = characters.first();
        for (int to = characters.next(); to != BreakIterator.DONE; from = to, to = characters.next()) {
            all.add(facing(run.substring(from, to)));
        }
        Collections.reverse(all);
        return String.join("", all);
    }

    private static String facing(String character) {
        int open = OPEN.indexOf(character);
        int close = CLOSE.indexOf(character);
        if (open >= 0) {
            return CLOSE.substring(open, open + 1);
        }
        return close >= 0 ? OPEN.substring(close, close + 1) : character;
    }
}
