package wickbench.report.pdf;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Breaks text into lines: between words, and within a word that is wider than a line. */
final class Wrap {
    private final Face face;
    private final double size;
    private final double width;
    private final List<String> lines = new ArrayList<>();
    private final StringBuilder line = new StringBuilder();
    private double used;

    private Wrap(Face face, double size, double width) {
        this.face = face;
        this.size = size;
        this.width = width;
    }

    /**
     * Returns the lines of a text; at least one.
     *
     * @param visible text whose characters the face has, with {@code \n} where a line ends
     */
    static List<String> lines(String visible, Face face, double size, double width) {
        Wrap wrap = new Wrap(face, size, width);
        for (String paragraph : visible.split("\n", -1)) {
            wrap.paragraph(paragraph);
        }
        return wrap.lines;
    }

    private void paragraph(String text) {
        BreakIterator words = BreakIterator.getLineInstance(Locale.ROOT);
        words.setText(text);
        int from = words.first();
        for (int to = words.next(); to != BreakIterator.DONE; from = to, to = words.next()) {
            word(text.substring(from, to));
        }
        end();
    }

    private void word(String word) {
        double wide = face.width(word.stripTrailing(), size);
        if (used + wide > width && used > 0) {
            end();
        }
        if (wide > width) {
            pieces(word);
        } else {
            add(word);
        }
    }

    /** By characters as people count them, so that an accent stays with its letter. */
    private void pieces(String word) {
        BreakIterator characters = BreakIterator.getCharacterInstance(Locale.ROOT);
        characters.setText(word);
        int from = characters.first();
        for (int to = characters.next(); to != BreakIterator.DONE; from = to, to = characters.next()) {
            String piece = word.substring(from, to);
            if (used + face.width(piece, size) > width && used > 0) {
                end();
            }
            add(piece);
        }
    }

    private void add(String text) {
        line.append(text);
        used += face.width(text, size);
    }

    private void end() {
        lines.add(line.toString().stripTrailing());
        line.setLength(0);
        used = 0;
    }
}
