package wickbench.report.pdf;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.Writer;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.datamatrix.DataMatrixWriter;
import com.google.zxing.datamatrix.encoder.SymbolShapeHint;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.awt.Color;
import java.io.IOException;
import java.util.Map;

/** A square code drawn as rectangles, with the quiet zone that it asks for. */
final class CodeMatrix {
    private static final int QUIET_QR = 4;
    private static final int QUIET_DATA_MATRIX = 1;

    private final BitMatrix modules;
    private final int quiet;

    private CodeMatrix(BitMatrix modules, int quiet) {
        this.modules = modules;
        this.quiet = quiet;
    }

    /** Returns a QR code (ISO/IEC 18004). */
    static CodeMatrix qr(String text) {
        Map<EncodeHintType, Object> hints = Map.of(
                EncodeHintType.CHARACTER_SET,
                "UTF-8",
                EncodeHintType.ERROR_CORRECTION,
                ErrorCorrectionLevel.L,
                EncodeHintType.MARGIN,
                0);
        return new CodeMatrix(encode(new QRCodeWriter(), BarcodeFormat.QR_CODE, text, hints), QUIET_QR);
    }

    /**
     * Returns a Data Matrix (ISO/IEC 16022) that begins with FNC1, as GS1 element strings do.
     *
     * @param elements with ASCII 29 where one ends that has no fixed length
     */
    static CodeMatrix gs1(String elements) {
        Map<EncodeHintType, Object> hints = Map.of(
                EncodeHintType.GS1_FORMAT,
                true,
                EncodeHintType.DATA_MATRIX_COMPACT,
                true,
                EncodeHintType.DATA_MATRIX_SHAPE,
                SymbolShapeHint.FORCE_SQUARE);
        return new CodeMatrix(
                encode(new DataMatrixWriter(), BarcodeFormat.DATA_MATRIX, elements, hints), QUIET_DATA_MATRIX);
    }

    private static BitMatrix encode(
            Writer writer, BarcodeFormat format, String text, Map<EncodeHintType, Object> hints) {
        try {
            return writer.encode(text, format, 0, 0, hints);
        } catch (WriterException e) {
            throw new IllegalStateException(text.length() + " characters fit into a code", e);
        }
    }

    void draw(Pen pen, double left, double top, double side) throws IOException {
        double module = side / (modules.getWidth() + 2 * quiet);
        for (int row = 0; row < modules.getHeight(); row++) {
            for (int from = 0; from < modules.getWidth(); from++) {
                int to = from;
                while (to < modules.getWidth() && modules.get(to, row)) {
                    to++;
                }
                if (to > from) {
                    pen.fill(
                            left + (from + quiet) * module,
                            top + (row + quiet) * module,
                            (to - from) * module,
                            module,
                            Color.BLACK);
                    from = to;
                }
            }
        }
    }
}
