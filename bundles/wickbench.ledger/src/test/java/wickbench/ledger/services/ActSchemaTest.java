package wickbench.ledger.services;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import wickbench.api.method.Method.Basis;
import wickbench.api.method.Quantity;
import wickbench.api.method.Unit;
import wickbench.ledger.acts.Move;
import wickbench.ledger.acts.Outside;
import wickbench.ledger.trend.TrendBase;
import wickbench.testing.Schemas;

/** Everything that the ledger writes is as the schemas say, one schema a kind. */
class ActSchemaTest {

    @Test
    void every_kind_is_written_as_its_schema_says() throws IOException {
        Schemas schemas = Schemas.published();
        Set<String> kinds = new TreeSet<>();
        try (Quality quality = Quality.tested()) {
            live(quality);
            quality.site.journal.read(quality.site.journal.stations().get(0), 0, entry -> {
                kinds.add(entry.kind());
                assertThat(schemas.errors(
                                entry.kind() + "-1.schema.json", entry.body().canonical()))
                        .as("%s %s", entry.ref(), entry.kind())
                        .isEmpty();
                return true;
            });
        }
        assertThat(kinds)
                .contains(
                        "reading.reviewed",
                        "owed.ordered",
                        "owed.settled",
                        "action.decided",
                        "outside.reported",
                        "release.planned",
                        "release.recorded",
                        "trend.based");
    }

    @Test
    void the_schemas_see_what_is_wrong() throws IOException {
        Schemas schemas = Schemas.published();
        for (String kind : List.of(
                "reading.reviewed",
                "owed.ordered",
                "action.decided",
                "outside.reported",
                "release.planned",
                "release.recorded",
                "trend.based")) {
            assertThat(schemas.errors(kind + "-1.schema.json", "{\"reason\":\"\"}"))
                    .as(kind)
                    .isNotEmpty();
        }
    }

    private static void live(Quality quality) {
        UUID positive = quality.positive("S-3", Quality.HOPPER, Strips.START.plusSeconds(7200))
                .id();
        quality.reviewing.review(List.of(positive), Optional.of("looked at twice"), Quality.REVIEWER, Optional.empty());
        quality.cleared(positive, Quality.HOPPER, Strips.START.plusSeconds(9000));
        quality.decide(positive, Move.REPEAT, Quality.REVIEWER);
        quality.negative("S-3", Quality.HOPPER, Strips.START.plusSeconds(10_800));
        quality.deciding.reported(
                new Outside(
                        "Harbour Laboratory",
                        "HL-17",
                        "F-1",
                        "hazelnut",
                        false,
                        Optional.of(Quantity.of("2.5", Unit.MG_PER_KG)),
                        Optional.of(Basis.TOTAL_PROTEIN),
                        Optional.of(Quality.BATCH),
                        List.of(positive),
                        Instant.parse("2026-03-05T10:00:00Z")),
                Quality.TESTER);
        quality.owed.of(positive).stream()
                .filter(item -> !item.done() && item.step().owed() != wickbench.api.reading.Owed.HOLD)
                .forEach(item -> quality.owed.settle(
                        positive, item.step().owed(), "tested again", Quality.REVIEWER, Optional.empty()));
        quality.decide(positive, Move.RELEASE, "worn seal", Quality.RELEASER);
        quality.release(Quality.RELEASER);
        LocalDate day = Strips.START.atZone(TestSite.ZONE).toLocalDate();
        quality.doors
                .trending()
                .base(
                        new TrendBase(
                                Optional.of(Quality.LINE),
                                Optional.empty(),
                                Optional.of(Quality.HOPPER.method()),
                                Optional.empty(),
                                day,
                                day.plusDays(30),
                                "the first month of the new procedure"),
                        Quality.REVIEWER,
                        Optional.empty());
    }
}
