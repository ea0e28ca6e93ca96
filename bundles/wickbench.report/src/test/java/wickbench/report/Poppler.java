package wickbench.report;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.MultiFormatReader;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;

/** Reads a PDF back with programs that did not write it. */
public record Poppler(Path file) {
    private static final int SECONDS = 60;
    private static final int DPI = 150;

    /** Returns all words, laid out about as on paper. */
    public String text() throws IOException, InterruptedException {
        Path out = file.resolveSibling(file.getFileName() + ".txt");
        Programs.run(List.of("pdftotext", "-layout", "-enc", "UTF-8", file.toString(), out.toString()), SECONDS);
        return Files.readString(out);
    }

    /** Returns all words in the order in which they were written. */
    public String raw() throws IOException, InterruptedException {
        Path out = file.resolveSibling(file.getFileName() + ".raw.txt");
        Programs.run(List.of("pdftotext", "-raw", "-enc", "UTF-8", file.toString(), out.toString()), SECONDS);
        return Files.readString(out);
    }

    public String fonts() throws IOException, InterruptedException {
        return Programs.run(List.of("pdffonts", file.toString()), SECONDS);
    }

    public String images() throws IOException, InterruptedException {
        return Programs.run(List.of("pdfimages", "-list", file.toString()), SECONDS);
    }

    /** Returns how many pages there are. */
    public int pages() throws IOException, InterruptedException {
        return Programs.run(List.of("pdfinfo", file.toString()), SECONDS)
                .lines()
                .filter(line -> line.startsWith("Pages:"))
                .mapToInt(line -> Integer.parseInt(line.substring(6).strip()))
                .findFirst()
                .orElseThrow();
    }

    /** Draws a page, counted from 1, also into {@code target/pictures} for people to look at. */
    public BufferedImage page(int number) throws IOException, InterruptedException {
        Path folder = Files.createDirectories(Path.of("target", "pictures"));
        Path out = folder.resolve(file.getFileName().toString().replace(".pdf", "-" + number));
        Programs.run(
                List.of(
                        "pdftoppm",
                        "-png",
                        "-r",
                        "" + DPI,
                        "-singlefile",
                        "-f",
                        "" + number,
                        "-l",
                        "" + number,
                        file.toString(),
                        out.toString()),
                SECONDS);
        return ImageIO.read(out.resolveSibling(out.getFileName() + ".png").toFile());
    }

    /** Returns what the code at the foot of a page says. */
    public String code(int page) throws IOException, InterruptedException, NotFoundException {
        BufferedImage image = page(page);
        int width = image.getWidth();
        int height = image.getHeight();
        // the foot alone, as a camera would be held
        BufferedImage foot = image.getSubimage(width / 2, height * 3 / 4, width / 2, height / 4);
        int[] pixels = foot.getRGB(0, 0, foot.getWidth(), foot.getHeight(), null, 0, foot.getWidth());
        RGBLuminanceSource source = new RGBLuminanceSource(foot.getWidth(), foot.getHeight(), pixels);
        return new MultiFormatReader()
                .decode(new BinaryBitmap(new HybridBinarizer(source)))
                .getText();
    }
}
