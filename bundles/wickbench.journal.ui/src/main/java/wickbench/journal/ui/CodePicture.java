package wickbench.journal.ui;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.LuminanceSource;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.GlobalHistogramBinarizer;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

/** Reads the code that a report carries from a picture of it: a photograph, a scan, a piece of the screen. */
final class CodePicture {
    /** More than any camera's picture; a file may claim any size, so it is looked at before it is unpacked. */
    private static final long MOST_PIXELS = 60_000_000;

    private static final Map<DecodeHintType, Object> HINTS =
            Map.of(DecodeHintType.TRY_HARDER, true, DecodeHintType.CHARACTER_SET, "UTF-8");

    private CodePicture() {}

    /**
     * Returns the text of the code; empty when none is found.
     *
     * @throws IOException in words, when the file is no picture or too large
     */
    static Optional<String> read(Path file) throws IOException {
        BufferedImage picture = load(file);
        int width = picture.getWidth();
        int height = picture.getHeight();
        LuminanceSource light = new RGBLuminanceSource(
                width, height, picture.getRGB(0, 0, width, height, new int[width * height], 0, width));
        return List.of(
                        new BinaryBitmap(new HybridBinarizer(light)),
                        new BinaryBitmap(new GlobalHistogramBinarizer(light)))
                .stream()
                .map(CodePicture::decode)
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Optional<String> decode(BinaryBitmap bits) {
        try {
            return Optional.of(new QRCodeReader().decode(bits, HINTS).getText());
        } catch (ReaderException e) {
            // that there is none in this picture is an answer
            return Optional.empty();
        }
    }

    private static BufferedImage load(Path file) throws IOException {
        try (ImageInputStream in = ImageIO.createImageInputStream(file.toFile())) {
            Iterator<ImageReader> readers =
                    in == null ? List.<ImageReader>of().iterator() : ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                throw new IOException(JournalUiWords.get("picture.none", file.getFileName()));
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(in);
                if ((long) reader.getWidth(0) * reader.getHeight(0) > MOST_PIXELS) {
                    throw new IOException(JournalUiWords.get("picture.large", file.getFileName()));
                }
                return onWhite(reader.read(0));
            } finally {
                reader.dispose();
            }
        }
    }

    /** Lays a picture on white paper, so that what is clear in it is not taken for black. */
    private static BufferedImage onWhite(BufferedImage picture) {
        BufferedImage paper = new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = paper.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, paper.getWidth(), paper.getHeight());
        graphics.drawImage(picture, 0, 0, null);
        graphics.dispose();
        return paper;
    }
}
