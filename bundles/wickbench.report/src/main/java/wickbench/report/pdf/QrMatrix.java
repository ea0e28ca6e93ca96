package wickbench.report.pdf;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.awt.Color;
import java.io.IOException;
import java.util.Map;

/** A QR code (ISO/IEC 18004) drawn as rectangles, with the quiet zone that it asks for. */
final class QrMatrix {
    private static final int QUIET_MODULES = 4;

    private final BitMatrix modules;

    QrMatrix(String text) {
        try {
            modules = new QRCodeWriter()
                    .encode(
                            text,
                            BarcodeFormat.QR_CODE,
                            0,
                            0,
                            Map.of(
                                    EncodeHintType.CHARACTER_SET,
                                    "UTF-8",
                                    EncodeHintType.ERROR_CORRECTION,
                                    ErrorCorrectionLevel.L,
                                    EncodeHintType.MARGIN,
                                    QUIET_MODULES));
        } catch (WriterException e) {
            throw new IllegalStateException("a note of " + text.length() + " characters fits into a QR code", e);
        }
    }

    void draw(Pen pen, double left, double top, double side) throws IOException {
        double module = side / modules.getWidth();
        for (int row = 0; row < modules.getHeight(); row++) {
            for (int from = 0; from < modules.getWidth(); from++) {
                int to = from;
                while (to < modules.getWidth() && modules.get(to, row)) {
                    to++;
                }
                if (to > from) {
                    pen.fill(left + from * module, top + row * module, (to - from) * module, module, Color.BLACK);
                    from = to;
                }
            }
        }
    }
}
