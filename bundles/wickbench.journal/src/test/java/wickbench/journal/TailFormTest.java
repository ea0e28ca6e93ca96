package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The end of a line is as it must be in every byte, or it does not fit. */
class TailFormTest {
    private static final byte[] PREV = Kept.NOTHING.leaf().bytes();

    private final TailForm form = new TailForm(Recorded.STATION);

    private static String tail(long place, String version) {
        return ",\"prev\":\"" + Kept.NOTHING.leaf().hex() + "\",\"seq\":" + place + ",\"station\":\"station-1\",\"v\":"
                + version + "}";
    }

    private boolean fits(String line, long place) {
        byte[] bytes = line.getBytes(StandardCharsets.UTF_8);
        return form.fits(bytes, 0, bytes.length, PREV, place);
    }

    @ParameterizedTest
    @CsvSource({"0,1", "1,9", "9,10", "10,19", "99,90", "100,2", "9223372036854775807,1"})
    void the_end_of_an_entry_fits_at_its_place_and_at_no_other(long place, String version) {
        assertThat(fits("{\"at\":1" + tail(place, version), place)).isTrue();
        assertThat(fits(tail(place, version), place)).isTrue();
        assertThat(fits("{" + tail(place, version), place - 1)).isFalse();
    }

    @Test
    void no_byte_may_be_another() {
        String line = "{" + tail(1234, "10");
        for (int at = 1; at < line.length(); at++) {
            char touched = line.charAt(at);
            for (char other : new char[] {(char) (touched ^ 1), '/', ':', '}', 'x'}) {
                boolean isDigitOfVersion =
                        Character.isDigit(other) && at >= line.length() - 3 && at < line.length() - 1;
                String changed = line.substring(0, at) + other + line.substring(at + 1);
                assertThat(fits(changed, 1234)).as(changed).isEqualTo(other == touched || isDigitOfVersion);
            }
        }
    }

    @Test
    void what_is_too_short_does_not_fit_whatever_stands_before_it() {
        byte[] all = tail(7, "12").getBytes(StandardCharsets.UTF_8);
        for (int from = 1; from <= all.length; from++) {
            assertThat(form.fits(all, from, all.length - from, PREV, 7))
                    .as("" + from)
                    .isFalse();
        }
        for (String line : new String[] {"", "}", "7}", "77}", ",\"v\":}"}) {
            assertThat(fits(line, 7)).as(line).isFalse();
        }
        assertThat(fits(tail(7, ""), 7)).isFalse();
    }

    @Test
    void what_stands_behind_a_line_is_not_looked_at() {
        byte[] line = tail(7, "1").getBytes(StandardCharsets.UTF_8);
        byte[] buffer = Arrays.copyOf(line, line.length + 3);
        Arrays.fill(buffer, line.length, buffer.length, (byte) '9');
        assertThat(form.fits(buffer, 0, line.length, PREV, 7)).isTrue();
        assertThat(form.fits(buffer, 0, line.length + 1, PREV, 7)).isFalse();
    }
}
