package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Base64;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wickbench.api.journal.Hash;
import wickbench.proof.Digest;
import wickbench.proof.Note;
import wickbench.proof.OpenKey;

/** Against the texts of C2SP tlog-checkpoint and signed-note. */
class NoteTest {
    private static final StationKey KEY = StationKey.fromSeed(new byte[OpenKey.BYTES]);
    private static final Note NOTE = Note.sign(
            Origin.of(Recorded.STATION), 7, Digest.of(Hash.ofContent("root").bytes()), KEY.open(), KEY::sign);

    @Test
    void a_note_is_origin_size_and_root_an_empty_line_and_a_signature() {
        String[] lines = NOTE.whole().split("\n", -1);
        assertThat(lines).hasSize(6);
        assertThat(lines[0]).isEqualTo("wickbench.invalid/station-1");
        assertThat(lines[1]).isEqualTo("7");
        assertThat(Base64.getDecoder().decode(lines[2]))
                .isEqualTo(Hash.ofContent("root").bytes());
        assertThat(lines[3]).isEmpty();
        assertThat(lines[4]).startsWith("\u2014 wickbench.invalid/station-1 ");
        assertThat(lines[5]).isEmpty();
    }

    @Test
    void the_signature_begins_with_the_key_id_and_covers_the_text_with_its_last_line_end() {
        byte[] signature = Base64.getDecoder().decode(NOTE.signature());
        byte[] name = "wickbench.invalid/station-1\n\u0001".getBytes(StandardCharsets.UTF_8);
        byte[] named = Arrays.copyOf(name, name.length + OpenKey.BYTES);
        System.arraycopy(KEY.open().raw(), 0, named, name.length, OpenKey.BYTES);
        assertThat(Arrays.copyOf(signature, 4))
                .isEqualTo(Arrays.copyOf(Hash.ofContent(named).bytes(), 4));
        assertThat(KEY.open()
                        .signed(
                                NOTE.text().getBytes(StandardCharsets.UTF_8),
                                Arrays.copyOfRange(signature, 4, signature.length)))
                .isTrue();
    }

    @Test
    void a_note_is_read_back_and_proved() {
        Note read = Note.parse(NOTE.whole()).orElseThrow();
        assertThat(read).isEqualTo(NOTE);
        assertThat(read.signedBy(KEY.open())).isTrue();
        byte[] other = new byte[OpenKey.BYTES];
        other[0] = 1;
        assertThat(read.signedBy(StationKey.fromSeed(other).open())).isFalse();
    }

    @Test
    void a_note_with_any_bit_flipped_is_not_read_or_not_proved() {
        byte[] whole = NOTE.whole().getBytes(StandardCharsets.UTF_8);
        for (int bit = 0; bit < whole.length * Byte.SIZE; bit++) {
            byte[] flipped = whole.clone();
            flipped[bit / Byte.SIZE] ^= (byte) (1 << bit % Byte.SIZE);
            assertThat(Note.parse(new String(flipped, StandardCharsets.UTF_8)).filter(n -> n.signedBy(KEY.open())))
                    .as("bit %d", bit)
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\n", "a\n1\n\n\n\u2014 a b\n", "a b\n1\nAAAA\n\n\u2014 a b\n"})
    void what_is_no_note_is_none(String text) {
        assertThat(Note.parse(text)).isEmpty();
    }

    @Test
    void a_note_signed_under_another_name_is_none() {
        assertThat(Note.parse(NOTE.whole().replace("\u2014 wickbench.invalid/station-1", "\u2014 elsewhere")))
                .isEmpty();
    }
}
