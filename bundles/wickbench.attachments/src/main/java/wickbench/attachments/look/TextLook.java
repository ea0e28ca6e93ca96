package wickbench.attachments.look;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import wickbench.api.attachment.FileName;
import wickbench.api.attachment.MediaType;

/** Tells text from other bytes: UTF-8 without control characters; the name says which kind of text. */
final class TextLook {
    private static final int BUFFER = 1 << 13;

    private int first = -1;
    private int last = -1;

    private TextLook() {}

    static MediaType of(InputStream in, FileName name) throws IOException, Unfit {
        TextLook look = new TextLook();
        try (Reader reader = new InputStreamReader(
                in,
                StandardCharsets.UTF_8
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT))) {
            look.read(reader);
        } catch (CharacterCodingException e) {
            throw new Unfit(Unfit.UNKNOWN);
        }
        return look.type(name);
    }

    private void read(Reader reader) throws IOException, Unfit {
        char[] buffer = new char[BUFFER];
        for (int read = reader.read(buffer); read >= 0; read = reader.read(buffer)) {
            for (int i = 0; i < read; i++) {
                take(buffer[i]);
            }
        }
    }

    private void take(char next) throws Unfit {
        boolean layout = next == '\n' || next == '\r' || next == '\t' || next == '\f';
        if (Character.isISOControl(next) && !layout) {
            throw new Unfit(Unfit.UNKNOWN);
        }
        if (!Character.isWhitespace(next) && next != '\uFEFF') {
            first = first < 0 ? next : first;
            last = next;
        }
    }

    private MediaType type(FileName name) {
        boolean closed = first == '{' && last == '}' || first == '[' && last == ']';
        return switch (name.ending()) {
            case "json" -> closed ? MediaType.JSON : MediaType.TEXT;
            case "csv" -> MediaType.CSV;
            default -> MediaType.TEXT;
        };
    }
}
