package wickbench.api.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wickbench.api.check.Checked;
import wickbench.api.check.Complaint;

/**
 * Reads JSON strictly: I-JSON (RFC 7493), bounded in depth and size.
 *
 * <p>Refused, with the line: duplicate names, lone surrogates, numbers of more than 15 significant digits or outside
 * 1e±300, more than {@value #DEPTH} levels, text that is not UTF-8, anything after the value.
 */
public final class JsonReader {
    static final int DEPTH = 64;
    private static final int LONGEST_NUMBER = 400;
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(DEPTH)
                    .maxNumberLength(LONGEST_NUMBER)
                    .build())
            .build();

    private JsonReader() {}

    /**
     * Reads one value.
     *
     * @param source the name that complaints carry
     */
    public static Checked<Json> read(String source, byte[] utf8) {
        try {
            return read(
                    source,
                    StandardCharsets.UTF_8
                            .newDecoder()
                            .decode(ByteBuffer.wrap(utf8))
                            .toString());
        } catch (CharacterCodingException e) {
            return Checked.bad(Complaint.of(source, "not UTF-8 text"));
        }
    }

    /** Reads one value. */
    public static Checked<Json> read(String source, String text) {
        try (JsonParser parser = FACTORY.createParser(text)) {
            return readOnly(source, parser);
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 1 : Math.max(1, e.getLocation().getLineNr());
            return Checked.bad(Complaint.at(source, line, "", "not JSON: " + firstLine(e.getOriginalMessage())));
        } catch (IOException e) {
            throw new IllegalStateException("a text in memory cannot fail to be read", e);
        }
    }

    /** Reads one value that must be an object. */
    public static Checked<Json.Obj> readObject(String source, String text) {
        return read(source, text)
                .then(value -> value instanceof Json.Obj object
                        ? Checked.good(object)
                        : Checked.bad(Complaint.of(source, "expected a JSON object")));
    }

    private static Checked<Json> readOnly(String source, JsonParser parser) throws IOException {
        try {
            if (parser.nextToken() == null) {
                return Checked.bad(Complaint.of(source, "empty; expected a JSON value"));
            }
            Json value = value(parser);
            if (parser.nextToken() != null) {
                return Checked.bad(Complaint.at(
                        source, parser.currentLocation().getLineNr(), "", "something stands after the JSON value"));
            }
            return Checked.good(value);
        } catch (IllegalArgumentException | ArithmeticException e) {
            // the value types refuse what I-JSON forbids
            return Checked.bad(
                    Complaint.at(source, parser.currentLocation().getLineNr(), "", String.valueOf(e.getMessage())));
        }
    }

    private static Json value(JsonParser parser) throws IOException {
        return switch (parser.currentToken()) {
            case START_OBJECT -> object(parser);
            case START_ARRAY -> array(parser);
            case VALUE_STRING -> new Json.Text(parser.getText());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Json.Num(new BigDecimal(parser.getText()));
            case VALUE_TRUE -> new Json.Bool(true);
            case VALUE_FALSE -> new Json.Bool(false);
            default -> Json.Null.NULL;
        };
    }

    private static Json object(JsonParser parser) throws IOException {
        Map<String, Json> members = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            parser.nextToken();
            members.put(name, value(parser));
        }
        return new Json.Obj(members);
    }

    private static Json array(JsonParser parser) throws IOException {
        List<Json> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(value(parser));
        }
        return new Json.Arr(items);
    }

    private static String firstLine(String message) {
        return message == null ? "unreadable" : message.lines().findFirst().orElse("unreadable");
    }
}
