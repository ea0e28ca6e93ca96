package wickbench.figures.sums;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickbench.api.check.BadInput;
import wickbench.api.check.Checked;
import wickbench.api.check.Complaint;
import wickbench.api.json.Json;

/**
 * A sum as it stands in the journal: the body of {@code figure.kept}; the schema is {@code docs/formats/figure.kept-1.schema.json}.
 *
 * @param sum the id of the sum
 * @param version of its formula
 * @param given what it was reckoned from, with what held where nothing was given
 * @param figures what came of it, as numbers and codes
 * @param about what it was for, in the words of who kept it
 */
public record KeptSum(String sum, int version, Given given, Json.Obj figures, Optional<String> about) {
    /** The kind of entry. */
    public static final String KIND = "figure.kept";

    /** The version of the body. */
    public static final int VERSION = 1;

    /** So many cells stay readable; larger tables are files to be attached. */
    public static final int MOST_CELLS = 20_000;

    private static final int LONGEST_ABOUT = 500;

    /** A sentence in the language of its reader is no record; it follows from the figures. */
    private static final String SENTENCE = "text";

    /**
     * Takes what a sum has given.
     *
     * @throws BadInput when there is too much of it to be kept
     */
    public static KeptSum of(Sum sum, Reckoned.Done done, Optional<String> about) {
        int cells = done.given().tables().values().stream()
                .flatMap(table -> table.lines().stream())
                .mapToInt(line -> line.cells().size())
                .sum();
        if (cells > MOST_CELLS) {
            throw new BadInput(Complaint.of(sum.id(), SumWords.get("kept.too-large", cells, MOST_CELLS)));
        }
        Optional<String> said = about.map(String::strip).filter(text -> !text.isEmpty());
        if (said.filter(text -> text.length() > LONGEST_ABOUT).isPresent()) {
            throw new BadInput(Complaint.of("about", SumWords.get("kept.about-too-long", LONGEST_ABOUT)));
        }
        Json.Obj figures = (Json.Obj) withoutSentences(done.answer().figures());
        return new KeptSum(sum.id(), sum.version(), done.given(), figures, said);
    }

    /** Returns the body of the entry. */
    public Json.Obj body() {
        return KeptJson.write(this);
    }

    /** Reads a body. */
    public static Checked<KeptSum> read(String source, Json.Obj body) {
        return KeptJson.read(source, body);
    }

    private static Json withoutSentences(Json value) {
        if (value instanceof Json.Arr array) {
            return new Json.Arr(
                    array.items().stream().map(KeptSum::withoutSentences).toList());
        }
        if (value instanceof Json.Obj object) {
            Json.Obj bare = Json.object();
            for (Map.Entry<String, Json> member : object.members().entrySet()) {
                if (!member.getKey().equals(SENTENCE)) {
                    bare = bare.with(member.getKey(), withoutSentences(member.getValue()));
                }
            }
            return bare;
        }
        return value;
    }

    /** Returns the cells of a table row by row, as they were written. */
    static List<List<String>> cells(TableText table) {
        return table.lines().stream().map(TableText.Line::cells).toList();
    }
}
