package wickbench.api.check;

import java.util.OptionalInt;

/**
 * One thing that is wrong with an input.
 *
 * @param source the file or document, as the user named it
 * @param line the line, counted from 1, where the source has lines
 * @param field the field or path within the source; empty when the whole source is meant
 * @param text what is wrong and what was expected, in one sentence
 */
public record Complaint(String source, OptionalInt line, String field, String text) {

    public static Complaint of(String source, String text) {
        return new Complaint(source, OptionalInt.empty(), "", text);
    }

    public static Complaint of(String source, String field, String text) {
        return new Complaint(source, OptionalInt.empty(), field, text);
    }

    public static Complaint at(String source, int line, String field, String text) {
        return new Complaint(source, OptionalInt.of(line), field, text);
    }

    /** Returns the complaint as one line: {@code sheet.csv:4: started: …}. */
    public String oneLine() {
        StringBuilder out = new StringBuilder(source);
        line.ifPresent(n -> out.append(':').append(n));
        if (!field.isEmpty()) {
            out.append(": ").append(field);
        }
        return out.append(": ").append(text).toString();
    }
}
