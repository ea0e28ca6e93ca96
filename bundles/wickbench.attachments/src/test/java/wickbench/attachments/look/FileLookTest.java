package wickbench.attachments.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.attachment.FileName;
import wickbench.api.attachment.MediaType;
import wickbench.api.attachment.Picture;

class FileLookTest {
    private static final byte[] PDF = "%PDF-1.4\n1 0 obj\nendobj\ntrailer\n%%EOF\n".getBytes(StandardCharsets.US_ASCII);

    @TempDir
    Path folder;

    @Test
    void a_picture_tells_its_size_without_being_decoded() throws IOException {
        assertThat(look(Pictures.png(30, 20))).isEqualTo(picture(MediaType.PNG, 30, 20, 1, 8));
        assertThat(look(Pictures.jpeg(31, 21))).isEqualTo(picture(MediaType.JPEG, 31, 21, 1, 8));
    }

    @Test
    void a_picture_that_claims_billions_of_pixels_is_never_decoded() throws IOException {
        byte[] bomb = Pictures.pngThatClaims(60_000, 60_000, 8);
        assertThat(found(bomb).unreadable()).hasValue("picture.too-large");
        assertThat(found(Pictures.pngThatClaims(7_000, 7_000, 8)).unreadable()).isEmpty();
        assertThat(found(Pictures.pngThatClaims(50_001, 1_000, 8)).unreadable()).hasValue("picture.too-large");
    }

    @Test
    void sixteen_bits_are_noted() throws IOException {
        assertThat(found(Pictures.pngThatClaims(10, 10, 16)).bits()).isEqualTo(16);
    }

    @Test
    void printing_colours_are_kept_but_not_decoded() throws IOException {
        assertThat(found(Pictures.fourColours(Pictures.jpeg(16, 16))).unreadable())
                .hasValue("picture.four-colours");
    }

    @Test
    void how_a_photograph_is_to_be_turned_is_read_in_both_byte_orders() throws IOException {
        for (int orientation = 1; orientation <= 8; orientation++) {
            for (ByteOrder order : new ByteOrder[] {ByteOrder.LITTLE_ENDIAN, ByteOrder.BIG_ENDIAN}) {
                Picture found = found(Pictures.turned(Pictures.jpeg(40, 30), orientation, order));
                assertThat(found.orientation()).as("%s %s", orientation, order).isEqualTo(orientation);
                assertThat(found.width()).isEqualTo(40);
            }
        }
    }

    @Test
    void nonsense_about_turning_means_upright() throws IOException {
        byte[] jpeg = Pictures.jpeg(8, 8);
        assertThat(found(Pictures.turned(jpeg, 9, ByteOrder.BIG_ENDIAN)).orientation())
                .isEqualTo(1);
        byte[] short1 = "Exif\0\0MM\0*\0\0\0\u0008\u00ff\u00ff".getBytes(StandardCharsets.ISO_8859_1);
        assertThat(found(Pictures.withSegment(jpeg, short1)).orientation()).isEqualTo(1);
        byte[] far = "Exif\0\0II*\0\u00ff\u00ff\u00ff\u007f".getBytes(StandardCharsets.ISO_8859_1);
        assertThat(found(Pictures.withSegment(jpeg, far)).orientation()).isEqualTo(1);
    }

    @Test
    void every_cut_of_a_picture_is_noticed() throws IOException {
        for (byte[] whole : new byte[][] {Pictures.png(12, 9), Pictures.jpeg(12, 9)}) {
            for (int length = 8; length < whole.length; length++) {
                assertThat(look(Arrays.copyOf(whole, length)))
                        .as("%s of %s bytes", length, whole.length)
                        .isInstanceOf(Look.Unreadable.class);
            }
        }
    }

    @Test
    void every_flipped_bit_of_a_png_is_noticed() throws IOException {
        byte[] whole = Pictures.png(5, 5);
        for (int bit = 0; bit < whole.length * 8; bit++) {
            byte[] bent = whole.clone();
            bent[bit / 8] ^= (byte) (1 << bit % 8);
            assertThat(look(bent)).as("bit %s", bit).isInstanceOf(Look.Unreadable.class);
        }
    }

    @Test
    void a_pdf_is_whole_when_its_end_is_there() throws IOException {
        assertThat(look(PDF)).isEqualTo(new Look.Known(MediaType.PDF, Optional.empty()));
        assertThat(look(Arrays.copyOf(PDF, 20))).isEqualTo(new Look.Unreadable("cut-short"));
    }

    @Test
    void text_is_told_apart_by_its_name() throws IOException {
        assertThat(type("a;b\n1,5;2\n", "t.csv")).isEqualTo(MediaType.CSV);
        assertThat(type("{\"a\": [1]}\n", "t.json")).isEqualTo(MediaType.JSON);
        assertThat(type("{\"a\": [1", "t.json")).isEqualTo(MediaType.TEXT);
        assertThat(type("\uFEFFpH 7 µg\r\n", "notes")).isEqualTo(MediaType.TEXT);
    }

    @Test
    void other_bytes_are_not_taken() throws IOException {
        assertThat(look(new byte[0])).isEqualTo(new Look.Unreadable("empty"));
        assertThat(look(new byte[] {'a', 0, 'b'})).isEqualTo(new Look.Unreadable("unknown"));
        assertThat(look(new byte[] {(byte) 0xC3, '('})).isEqualTo(new Look.Unreadable("unknown"));
        assertThat(look("GIF89a\1\0\1\0".getBytes(StandardCharsets.ISO_8859_1))).isInstanceOf(Look.Unreadable.class);
        assertThat(look(new byte[] {0x7F, 'E', 'L', 'F', 2, 1})).isInstanceOf(Look.Unreadable.class);
        byte[] noise = new byte[100_000];
        new Random(7).nextBytes(noise);
        assertThat(look(noise)).isInstanceOf(Look.Unreadable.class);
    }

    @Test
    void a_file_of_two_kinds_is_not_taken() throws IOException {
        byte[] archive = archive();
        Look two = new Look.Unreadable("two-kinds");
        assertThat(look(Pictures.joined(Pictures.png(4, 4), archive))).isEqualTo(two);
        assertThat(look(Pictures.joined(Pictures.jpeg(4, 4), archive))).isEqualTo(two);
        assertThat(look(Pictures.joined(PDF, archive, PDF))).isEqualTo(two);
        byte[] hidden = Pictures.withSegment(Pictures.jpeg(4, 4), Pictures.joined("note ".getBytes(), PDF));
        assertThat(look(hidden)).isEqualTo(two);
        assertThat(look(Pictures.withSegment(Pictures.jpeg(4, 4), "<SCRIPT src=x>".getBytes())))
                .isEqualTo(two);
        assertThat(look(Pictures.joined("text first\n".getBytes(), PDF))).isEqualTo(two);
    }

    @Test
    void a_second_picture_behind_a_photograph_is_what_cameras_do() throws IOException {
        byte[] pair = Pictures.joined(Pictures.jpeg(20, 10), Pictures.jpeg(2, 1));
        assertThat(found(pair).width()).isEqualTo(20);
    }

    private Look look(byte[] content) throws IOException {
        return look(content, "file");
    }

    private Look look(byte[] content, String name) throws IOException {
        return FileLook.at(Files.write(folder.resolve("file"), content), FileName.of(name));
    }

    private Picture found(byte[] content) throws IOException {
        return ((Look.Known) look(content)).picture().orElseThrow();
    }

    private MediaType type(String text, String name) throws IOException {
        return ((Look.Known) look(text.getBytes(StandardCharsets.UTF_8), name)).type();
    }

    private static Look picture(MediaType type, int width, int height, int orientation, int bits) {
        return new Look.Known(type, Optional.of(new Picture(width, height, orientation, bits, Optional.empty())));
    }

    private static byte[] archive() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            zip.putNextEntry(new ZipEntry("run.me"));
            zip.write(1);
        }
        return out.toByteArray();
    }
}
