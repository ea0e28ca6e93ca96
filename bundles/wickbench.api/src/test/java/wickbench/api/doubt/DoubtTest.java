package wickbench.api.doubt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wickbench.api.check.BadInput;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;
import wickbench.api.lot.LotId;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;

class DoubtTest {
    private static final Instant FROM = Instant.parse("2026-03-01T08:00:00Z");
    private static final LotId LOT = new LotId("HZ-1");
    private static final MethodId METHOD = new MethodId("hazelnut-rinse");
    private static final PersonId OPERATOR = new PersonId("op-01");

    @Test
    void what_is_put_into_a_body_is_found_there_beside_whatever_else_it_says() {
        List<Doubt> doubts = List.of(
                Doubt.ofLot("lot.rejected", LOT, Optional.of(FROM)),
                new Doubt(
                        "operator.suspended",
                        Optional.empty(),
                        Optional.of(METHOD),
                        Optional.of(OPERATOR),
                        Optional.empty(),
                        Optional.of(FROM)));
        Json.Obj body = Doubt.into(Json.object().with("reason", "recalled"), doubts);

        assertThat(Doubt.in("a:1", body)).isEqualTo(doubts);
        assertThat(Doubt.in("a:1", Json.object().with("reason", "recalled"))).isEmpty();
    }

    @Test
    void a_trust_is_found_likewise_and_one_about_nothing_is_not_written() {
        Trust trust = new Trust(List.of(new UUID(1, 2)), FROM);

        assertThat(Trust.in("a:1", trust.into(Json.object()))).contains(trust);
        assertThat(new Trust(List.of(), FROM).into(Json.object())).isEqualTo(Json.object());
    }

    @Test
    void both_bounds_are_exact_and_what_is_not_stated_bounds_nothing() {
        Doubt doubt = new Doubt(
                "lot.storage",
                Optional.of(LOT),
                Optional.empty(),
                Optional.empty(),
                Optional.of(FROM),
                Optional.of(FROM.plusSeconds(60)));

        assertThat(doubt.touches(LOT, METHOD, OPERATOR, FROM.minusMillis(1))).isFalse();
        assertThat(doubt.touches(LOT, METHOD, OPERATOR, FROM)).isTrue();
        assertThat(doubt.touches(LOT, METHOD, OPERATOR, FROM.plusSeconds(60).minusMillis(1)))
                .isTrue();
        assertThat(doubt.touches(LOT, METHOD, OPERATOR, FROM.plusSeconds(60))).isFalse();
        assertThat(doubt.touches(new LotId("HZ-2"), METHOD, OPERATOR, FROM)).isFalse();
        assertThat(Doubt.ofMethod("method.withdrawn", METHOD, Optional.empty())
                        .touches(LOT, METHOD, OPERATOR, Instant.MIN))
                .isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"doubts\":[{\"cause\":\"lot.rejected\"}]}",
                "{\"doubts\":[{\"lot\":\"HZ-1\"}]}",
                "{\"doubts\":[{\"cause\":\"Rejected!\",\"lot\":\"HZ-1\"}]}",
                "{\"doubts\":[{\"cause\":\"lot.rejected\",\"lot\":\"HZ-1\",\"from\":\"yesterday\"}]}",
                "{\"doubts\":[{\"cause\":\"lot.rejected\",\"lot\":\"HZ-1\",\"colour\":\"red\"}]}",
                "{\"doubts\":{\"cause\":\"lot.rejected\",\"lot\":\"HZ-1\"}}",
                "{\"doubts\":[7]}"
            })
    void what_cannot_be_read_is_named_and_never_passed_over(String body) {
        Json.Obj read = JsonReader.readObject("a:1", body).orRefuse();

        assertThatThrownBy(() -> Doubt.in("a:1", read))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("doubts");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"trusted_again\":{\"doubts\":[\"x\"],\"from\":\"2026-03-01T08:00:00.000Z\"}}",
                "{\"trusted_again\":{\"doubts\":[]}}",
                "{\"trusted_again\":[]}"
            })
    void a_trust_that_cannot_be_read_is_named_too(String body) {
        Json.Obj read = JsonReader.readObject("a:1", body).orRefuse();

        assertThatThrownBy(() -> Trust.in("a:1", read)).isInstanceOf(BadInput.class);
    }

    @Test
    void a_doubt_about_everything_or_without_a_cause_is_none() {
        assertThatThrownBy(() -> new Doubt(
                        "lot.rejected",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Doubt.ofLot("", LOT, Optional.empty())).isInstanceOf(IllegalArgumentException.class);
    }
}
