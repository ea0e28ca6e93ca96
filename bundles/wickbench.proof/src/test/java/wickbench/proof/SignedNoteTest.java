package wickbench.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.MessageDigest;
import java.security.Signature;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a stranger needs to believe a checkpoint: the note, the key, and nothing else of the house. */
class SignedNoteTest {
    private static final HexFormat HEX = HexFormat.of();
    private static final String ORIGIN = "wickbench.invalid/station-1";

    private KeyPair pair;
    private OpenKey key;
    private Note note;

    @BeforeEach
    void sign() throws GeneralSecurityException {
        pair = KeyPairGenerator.getInstance("Ed25519").generateKeyPair();
        key = OpenKey.of(pair.getPublic());
        note = Note.sign(ORIGIN, 7, Digest.of(new TreeHash().empty()), key, this::signature);
    }

    private byte[] signature(byte[] message) {
        try {
            Signature signer = Signature.getInstance("Ed25519");
            signer.initSign(pair.getPrivate());
            signer.update(message);
            return signer.sign();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    private static byte[] sha256(byte[] bytes) throws GeneralSecurityException {
        return MessageDigest.getInstance("SHA-256").digest(bytes);
    }

    /** Source: RFC 8032 §7.1, TEST 1 and TEST 2. */
    @ParameterizedTest
    @CsvSource({
        "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a,'',"
            + "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b",
        "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c,72,"
            + "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00"
    })
    void published_signatures_hold_and_altered_ones_do_not(String raw, String message, String signed) {
        byte[] open = HEX.parseHex(raw);
        OpenKey read = OpenKey.parse(Base64.getEncoder().encodeToString(open)).orElseThrow();
        assertThat(read.raw()).isEqualTo(open);
        assertThat(read.base64()).isEqualTo(Base64.getEncoder().encodeToString(open));
        assertThat(read.signed(HEX.parseHex(message), HEX.parseHex(signed))).isTrue();
        assertThat(read.signed(HEX.parseHex(message + "00"), HEX.parseHex(signed)))
                .isFalse();
        assertThat(key.signed(HEX.parseHex(message), HEX.parseHex(signed))).isFalse();
        assertThat(read.signed(HEX.parseHex(message), new byte[3])).isFalse();
    }

    @Test
    void a_key_is_its_raw_bytes_however_it_came() throws GeneralSecurityException {
        OpenKey read = OpenKey.parse(key.base64()).orElseThrow();
        assertThat(read.raw()).isEqualTo(key.raw()).hasSize(OpenKey.BYTES);
        assertThat(read.fingerprint()).isEqualTo(Digest.of(sha256(key.raw())));
        assertThat(OpenKey.parse("!")).isEmpty();
        assertThat(OpenKey.parse("AAAA")).isEmpty();
        key.raw()[0] ^= 1;
        assertThat(key.raw()).isEqualTo(read.raw());
    }

    @Test
    void a_note_says_whose_how_many_and_which_root_and_is_read_back() {
        String[] lines = note.whole().split("\n", -1);
        assertThat(lines[0]).isEqualTo(ORIGIN);
        assertThat(lines[1]).isEqualTo("7");
        assertThat(Base64.getDecoder().decode(lines[2])).isEqualTo(new TreeHash().empty());
        assertThat(lines[3]).isEmpty();
        assertThat(lines[4]).startsWith("\u2014 " + ORIGIN + " ");
        Note read = Note.parse(note.whole()).orElseThrow();
        assertThat(read).isEqualTo(note);
        assertThat(read.signedBy(key)).isTrue();
    }

    @Test
    void the_signature_begins_with_the_id_of_the_key_under_its_name() throws GeneralSecurityException {
        byte[] signature = Base64.getDecoder().decode(note.signature());
        byte[] name = (ORIGIN + "\n\u0001").getBytes(StandardCharsets.UTF_8);
        byte[] named = Arrays.copyOf(name, name.length + OpenKey.BYTES);
        System.arraycopy(key.raw(), 0, named, name.length, OpenKey.BYTES);
        assertThat(Arrays.copyOf(signature, 4)).isEqualTo(Arrays.copyOf(sha256(named), 4));
    }

    @Test
    void a_note_under_another_key_name_or_size_is_not_signed() throws GeneralSecurityException {
        OpenKey other = OpenKey.of(
                KeyPairGenerator.getInstance("Ed25519").generateKeyPair().getPublic());
        assertThat(note.signedBy(other)).isFalse();
        assertThat(Note.parse(note.whole().replace("\n7\n", "\n8\n"))
                        .orElseThrow()
                        .signedBy(key))
                .isFalse();
        assertThat(Note.parse(note.whole().replace("\u2014 " + ORIGIN, "\u2014 elsewhere")))
                .isEmpty();
        byte[] wrongId = Base64.getDecoder().decode(note.signature());
        wrongId[0] ^= 1;
        String forged =
                note.whole().replace(note.signature(), Base64.getEncoder().encodeToString(wrongId));
        assertThat(Note.parse(forged).orElseThrow().signedBy(key)).isFalse();
    }

    @Test
    void a_note_that_differs_in_what_base64_leaves_over_is_another_text() {
        String root = note.whole().split("\n")[2];
        for (String end : List.of(root, note.signature())) {
            char last = end.charAt(end.length() - 2);
            String spare = end.substring(0, end.length() - 2) + (char) (last + 1) + "=";
            assertThat(Note.parse(note.whole().replace(end, spare))).as(spare).isEmpty();
        }
    }

    @Test
    void a_frontier_and_its_copy_grow_apart() {
        Frontier one = new Frontier();
        one.add(new byte[32]);
        Frontier other = one.copy();
        Digest before = one.root();
        other.add(new byte[32]);
        assertThat(one.size()).isEqualTo(1);
        assertThat(one.root()).isEqualTo(before);
        assertThat(other.size()).isEqualTo(2);
        assertThat(other.root()).isNotEqualTo(before);
    }

    @Test
    void what_is_no_note_or_no_hash_is_none() {
        for (String text : List.of("", "\n", "a\n1\n\n\n\u2014 a b\n", note.text())) {
            assertThat(Note.parse(text)).as(text).isEmpty();
        }
        String digits = "0123456789abcdef".repeat(4);
        assertThat(new Digest(digits).bytes()).isEqualTo(HEX.parseHex(digits));
        for (String other : List.of("/", ":", "`", "g", "A", " ", "")) {
            String wrong = digits.substring(1) + other;
            assertThatThrownBy(() -> new Digest(wrong)).isInstanceOf(IllegalArgumentException.class);
        }
    }
}
