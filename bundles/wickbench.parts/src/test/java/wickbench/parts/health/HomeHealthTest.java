package wickbench.parts.health;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.api.part.Health.State;
import wickbench.api.words.Decimals;

class HomeHealthTest {
    private static final Instant NOW = Instant.parse("2026-11-25T08:00:00Z");
    private static final ZoneId VIENNA = ZoneId.of("Europe/Vienna");

    @ParameterizedTest
    @CsvSource({"1024, WELL", "1023, MINDED", "100, MINDED", "99, UNWELL", "0, UNWELL"})
    void little_room_is_told_before_there_is_none(long mib, State state) {
        assertThat(HomeHealth.disk(mib << 20).state()).isEqualTo(state);
        assertThat(HomeHealth.disk(mib << 20).text()).contains(Decimals.grouped(mib));
    }

    @Test
    void a_clock_behind_the_newest_entry_is_told_in_the_time_of_the_site() {
        assertThat(HomeHealth.clock(NOW, VIENNA, Optional.of(NOW.plusSeconds(60)), false)
                        .state())
                .isEqualTo(State.WELL);
        assertThat(HomeHealth.clock(NOW, VIENNA, Optional.of(NOW.plusSeconds(3600)), false))
                .satisfies(found -> assertThat(found.state()).isEqualTo(State.UNWELL))
                .satisfies(found -> assertThat(found.text()).contains("2026-11-25 09:00", "2026-11-25 10:00"));
        assertThat(HomeHealth.clock(NOW, VIENNA, Optional.empty(), true).state())
                .isEqualTo(State.MINDED);
    }
}
