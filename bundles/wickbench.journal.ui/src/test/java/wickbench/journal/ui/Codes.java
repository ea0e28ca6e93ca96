package wickbench.journal.ui;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import javax.imageio.ImageIO;

/** Pictures of codes as a camera takes them of a report. */
final class Codes {
    private static final int MODULE = 5;

    private Codes() {}

    static Path save(String text, Path file) throws IOException, WriterException {
        return save(draw(text, 0), file);
    }

    /** Draws the code on grey paper, turned by some degrees. */
    static BufferedImage draw(String text, double degrees) throws WriterException {
        BitMatrix modules = new QRCodeWriter()
                .encode(
                        text,
                        BarcodeFormat.QR_CODE,
                        0,
                        0,
                        Map.of(EncodeHintType.CHARACTER_SET, "UTF-8", EncodeHintType.MARGIN, 4));
        int side = modules.getWidth() * MODULE;
        BufferedImage picture = new BufferedImage(2 * side, 2 * side, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = picture.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setColor(new Color(0xD8D4CC));
        graphics.fillRect(0, 0, 2 * side, 2 * side);
        graphics.rotate(Math.toRadians(degrees), side, side);
        graphics.setColor(new Color(0x20242A));
        for (int y = 0; y < modules.getHeight(); y++) {
            for (int x = 0; x < modules.getWidth(); x++) {
                if (modules.get(x, y)) {
                    graphics.fillRect(side / 2 + x * MODULE, side / 2 + y * MODULE, MODULE, MODULE);
                }
            }
        }
        graphics.dispose();
        return picture;
    }

    static Path save(BufferedImage picture, Path file) throws IOException {
        ImageIO.write(picture, "png", file.toFile());
        return file;
    }

    static Path blank(Path file) throws IOException {
        return save(new BufferedImage(300, 200, BufferedImage.TYPE_INT_ARGB), file);
    }
}
