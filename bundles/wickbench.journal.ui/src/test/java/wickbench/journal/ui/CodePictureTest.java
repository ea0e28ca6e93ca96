package wickbench.journal.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CodePictureTest {
    private static final String NOTE =
            "wickbench.invalid/station-1\n1044\nl0ZCxqPNb3YTvxuoYBmxHjPJeUVHMdtdJBmcNSMdbGI=\n\n— wickbench.invalid/station-1 "
                    + "8yZ0".repeat(23) + "\n";

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(doubles = {0, 3, 20, 90, 180, 271})
    void a_code_is_read_however_the_paper_lies(double degrees) throws Exception {
        Path file = Codes.save(Codes.draw(NOTE, degrees), folder.resolve("code.png"));
        assertThat(CodePicture.read(file)).contains(NOTE);
    }

    @Test
    void a_picture_without_a_code_has_none() throws IOException {
        assertThat(CodePicture.read(Codes.blank(folder.resolve("blank.png")))).isEmpty();
    }

    @Test
    void what_is_no_picture_is_told() throws IOException {
        for (String text : new String[] {"", "hello", "\u0089PNG\r\n"}) {
            Path file = Files.writeString(folder.resolve("text.png"), text);
            assertThatThrownBy(() -> CodePicture.read(file)).isInstanceOf(IOException.class);
        }
        assertThatThrownBy(() -> CodePicture.read(folder.resolve("absent.png"))).isInstanceOf(IOException.class);
    }

    @Test
    void a_picture_that_claims_to_be_enormous_is_refused_before_it_is_unpacked() throws IOException {
        byte[] small = Files.readAllBytes(Codes.blank(folder.resolve("blank.png")));
        // IHDR of ISO/IEC 15948: width and height stand at bytes 16 to 23, its check sum at 29
        ByteBuffer png = ByteBuffer.wrap(small);
        png.putInt(16, 60_000).putInt(20, 60_000);
        CRC32 sum = new CRC32();
        sum.update(Arrays.copyOfRange(small, 12, 29));
        png.putInt(29, (int) sum.getValue());
        Path file = Files.write(folder.resolve("bomb.png"), small);
        assertThatThrownBy(() -> CodePicture.read(file))
                .hasMessageContaining("more picture points than any camera gives");
    }
}
