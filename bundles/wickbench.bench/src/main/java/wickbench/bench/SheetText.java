package wickbench.bench;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;

/**
 * The text of a sheet, refused as soon as it cannot be one.
 *
 * <p>A line of more than {@value #LONGEST_LINE} characters, a NUL, bytes that are not UTF-8 (UTF-16 with a byte order mark is
 * read too) and more than {@value #MOST_LINES} lines each end the reading with the line, before they fill the memory.
 */
final class SheetText extends Reader {
    static final int LONGEST_LINE = 64 * 1024;
    static final int MOST_LINES = 200_000;
    private static final int BOM_BYTES = 3;

    private final String source;
    private final Reader in;
    private int line = 1;
    private int inLine;

    private SheetText(String source, Reader in) {
        this.source = source;
        this.in = in;
    }

    static SheetText of(String source, InputStream bytes) throws IOException {
        BufferedInputStream in = new BufferedInputStream(bytes);
        Charset charset = charset(in);
        return new SheetText(
                source,
                new InputStreamReader(
                        in,
                        charset.newDecoder()
                                .onMalformedInput(CodingErrorAction.REPORT)
                                .onUnmappableCharacter(CodingErrorAction.REPORT)));
    }

    private static Charset charset(BufferedInputStream in) throws IOException {
        in.mark(BOM_BYTES);
        byte[] start = in.readNBytes(BOM_BYTES);
        in.reset();
        int first = start.length > 0 ? start[0] & 0xFF : 0;
        int second = start.length > 1 ? start[1] & 0xFF : 0;
        if (first == 0xEF && second == 0xBB && start.length == BOM_BYTES && (start[2] & 0xFF) == 0xBF) {
            in.skipNBytes(BOM_BYTES);
        }
        boolean wide = first == 0xFE && second == 0xFF || first == 0xFF && second == 0xFE;
        return wide ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8;
    }

    @Override
    public int read(char[] to, int offset, int length) throws IOException {
        int count = readOrRefuse(to, offset, length);
        for (int i = offset; i < offset + count; i++) {
            look(to[i]);
        }
        return count;
    }

    private int readOrRefuse(char[] to, int offset, int length) throws IOException {
        try {
            return in.read(to, offset, length);
        } catch (CharacterCodingException e) {
            throw refused(BenchWords.get("sheet.not-utf8"));
        }
    }

    private void look(char c) {
        if (c == '\0') {
            throw refused(BenchWords.get("sheet.nul"));
        }
        inLine = c == '\n' ? 0 : inLine + 1;
        line += c == '\n' ? 1 : 0;
        if (inLine > LONGEST_LINE) {
            throw refused(BenchWords.get("sheet.long-line", LONGEST_LINE));
        }
        if (line > MOST_LINES) {
            throw refused(BenchWords.get("sheet.many-lines", MOST_LINES));
        }
    }

    private BadInput refused(String text) {
        return new BadInput(Complaint.at(source, line, "", text));
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
