package wickbench.parts.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wickbench.api.check.BadInput;
import wickbench.api.check.Refusal;

/** Archives made to do harm: each is refused in one line, and nothing is written. */
class HostileArchiveTest {
    private static final byte[] TEXT = "{}".getBytes(StandardCharsets.UTF_8);
    private static final Map<String, byte[]> BUNDLES = Map.of("a-1.jar", "jar".getBytes(StandardCharsets.UTF_8));

    @TempDir
    Path folder;

    private MakerKey key;
    private Makers makers;

    @BeforeEach
    void keys() throws IOException {
        Files.createDirectory(folder.resolve("makers"));
        MakerKey.make(folder.resolve("secret"), folder.resolve("makers/site.pem"));
        key = MakerKey.read(folder.resolve("secret"));
        makers = Makers.of(folder);
    }

    @Test
    void what_was_packed_is_read_back_and_packed_again_to_the_same_bytes() {
        byte[] packed = SetPacking.pack(TEXT, BUNDLES, key);
        SetArchive archive = SetArchive.read("set.zip", packed, makers);
        assertThat(archive.maker()).isEqualTo("site");
        assertThat(archive.feature()).isEqualTo(TEXT);
        assertThat(archive.bundles()).containsOnlyKeys("a-1.jar");
        assertThat(SetPacking.pack(archive.feature(), archive.bundles(), key)).isEqualTo(packed);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../../evil.jar",
                "bundles/../../evil.jar",
                "bundles\\..\\..\\evil.jar",
                "bundles/..",
                "/etc/evil.jar",
                "\\\\host\\evil.jar",
                "C:\\evil.jar",
                "bundles/.hidden.jar",
                "bundles/deep/a.jar",
                "bundles/a.jar\n",
                "readme.txt",
                "bundles/",
                ""
            })
    void a_name_that_leads_elsewhere_is_refused(String name) {
        assertBad(new RawZip().file("feature.json", TEXT).file(name, TEXT), "expected");
    }

    @Test
    void a_link_is_refused() {
        byte[] target = "/etc/passwd".getBytes(StandardCharsets.UTF_8);
        assertBad(new RawZip().file("bundles/a.jar", target, target.length, RawZip.LINK), "is a link");
    }

    @ParameterizedTest
    @ValueSource(strings = {"bundles/a.jar", "bundles/A.jar"})
    void a_name_that_comes_twice_is_refused(String twin) {
        assertBad(new RawZip().file("bundles/a.jar", TEXT).file(twin, TEXT), "twice");
    }

    @Test
    void a_small_file_that_becomes_huge_is_refused_before_it_is_unpacked() {
        byte[] zeros = new byte[4 << 20];
        RawZip bomb = new RawZip().file("bundles/a.jar", zeros);
        assertThat(bomb.bytes().length).isLessThan(5_000);
        assertBad(bomb, "at most 100 bytes are taken out of one");
        assertBad(new RawZip().file("bundles/a.jar", TEXT, 4_000_000_000L, RawZip.PLAIN), "4000000000 bytes large");
    }

    @Test
    void many_files_of_the_same_bytes_are_refused() {
        assertBad(new RawZip().file("bundles/a.jar", TEXT).again("bundles/a.jar2.jar", TEXT), "shares its bytes");
        RawZip many = new RawZip();
        for (int i = 0; i <= Limits.FILES; i++) {
            many.file("bundles/" + i + ".jar", TEXT);
        }
        assertBad(many, "at most 200");
    }

    @Test
    void more_than_was_announced_never_comes_out() {
        assertBad(new RawZip().file("bundles/a.jar", new byte[5000], 4999, RawZip.PLAIN), "damaged");
        assertBad(new RawZip().file("bundles/a.jar", new byte[5000], 5001, RawZip.PLAIN), "damaged");
    }

    @Test
    void every_cut_and_whatever_stands_before_or_behind_is_refused() {
        byte[] packed = SetPacking.pack(TEXT, BUNDLES, key);
        for (int length = 0; length < packed.length; length++) {
            byte[] cut = java.util.Arrays.copyOf(packed, length);
            assertThatThrownBy(() -> SetArchive.read("set.zip", cut, makers)).isInstanceOf(BadInput.class);
        }
        byte[] longer = java.util.Arrays.copyOf(packed, packed.length + 1);
        assertThatThrownBy(() -> SetArchive.read("set.zip", longer, makers)).isInstanceOf(BadInput.class);
    }

    @Test
    void every_changed_byte_is_found_or_changes_nothing() {
        byte[] packed = SetPacking.pack(TEXT, BUNDLES, key);
        for (int i = 0; i < packed.length; i++) {
            byte[] changed = packed.clone();
            changed[i] ^= 0x41;
            try {
                SetArchive read = SetArchive.read("set.zip", changed, makers);
                assertThat(read.feature()).isEqualTo(TEXT);
                assertThat(read.bundles().get("a-1.jar")).isEqualTo(BUNDLES.get("a-1.jar"));
            } catch (BadInput | Refusal refused) {
                assertThat(refused.getMessage().lines()).hasSize(1);
            }
        }
    }

    @Test
    void what_nobody_known_signed_is_refused() {
        assertRefused("part.unsigned", new RawZip().file("feature.json", TEXT).bytes());
        MakerKey.make(folder.resolve("other"), folder.resolve("other.pem"));
        assertRefused("part.signature", SetPacking.pack(TEXT, BUNDLES, MakerKey.read(folder.resolve("other"))));
        assertThatThrownBy(() -> SetArchive.read(
                        "set.zip", SetPacking.pack(TEXT, BUNDLES, key), Makers.of(folder.resolve("nowhere"))))
                .isInstanceOf(Refusal.class);
    }

    @Test
    void a_signed_list_and_other_files_are_refused() {
        byte[] jar = "jar".getBytes(StandardCharsets.UTF_8);
        Map<String, byte[]> signed = new TreeMap<>(Map.of("feature.json", TEXT, "bundles/a.jar", jar));
        assertRefused("part.file-changed", zip(signed, Map.of("feature.json", TEXT, "bundles/a.jar", TEXT)));
        assertRefused("part.file-missing", zip(signed, Map.of("feature.json", TEXT)));
        assertRefused(
                "part.file-unlisted",
                zip(signed, Map.of("feature.json", TEXT, "bundles/a.jar", jar, "bundles/b.jar", jar)));
    }

    @Test
    void what_is_no_file_or_too_large_is_refused() throws IOException {
        assertThatThrownBy(() -> SetArchive.read(folder.resolve("none.zip"), makers))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("no such file");
        Path large = folder.resolve("large.zip");
        try (var file = new java.io.RandomAccessFile(large.toFile(), "rw")) {
            file.setLength(Limits.ARCHIVE + 1L);
        }
        assertThatThrownBy(() -> SetArchive.read(large, makers))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("bytes large");
    }

    @Test
    void other_tools_check_the_signature_and_the_list() throws Exception {
        SetArchive.read("set.zip", SetPacking.pack(TEXT, BUNDLES, key), makers);
        Files.write(folder.resolve("set.zip"), SetPacking.pack(TEXT, BUNDLES, key));
        Process openssl = new ProcessBuilder("sh", "-ec", """
                        python3 -m zipfile -e set.zip out && cd out
                        openssl pkeyutl -verify -pubin -inkey ../makers/site.pem -rawin -in DIGESTS -sigfile SIGNATURE
                        sha256sum -c DIGESTS""")
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        String said = new String(openssl.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(openssl.waitFor()).as(said).isZero();
        assertThat(said).contains("Signature Verified Successfully", "bundles/a-1.jar: OK", "feature.json: OK");
    }

    private byte[] zip(Map<String, byte[]> signed, Map<String, byte[]> there) {
        byte[] list = DigestList.of(signed);
        RawZip zip = new RawZip().file("DIGESTS", list).file("SIGNATURE", key.sign(list));
        there.forEach(zip::file);
        return zip.bytes();
    }

    private void assertBad(RawZip zip, String said) {
        assertThatThrownBy(() -> SetArchive.read("set.zip", zip.bytes(), makers))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("set.zip")
                .hasMessageContaining(said)
                .satisfies(refused -> assertThat(refused.getMessage().lines()).hasSize(1));
        try (Stream<Path> all = Files.walk(folder)) {
            assertThat(all.filter(Files::isRegularFile)).hasSize(2);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private void assertRefused(String code, byte[] zip) {
        assertThatThrownBy(() -> SetArchive.read("set.zip", zip, makers))
                .isInstanceOfSatisfying(
                        Refusal.class, refused -> assertThat(refused.code()).isEqualTo(code));
    }
}
