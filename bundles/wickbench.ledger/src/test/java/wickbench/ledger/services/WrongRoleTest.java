package wickbench.ledger.services;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import wickbench.api.authority.Act;
import wickbench.api.person.PersonId;
import wickbench.ledger.acts.Move;
import wickbench.ledger.acts.ReleasePlan;
import wickbench.ledger.acts.Subject;
import wickbench.ledger.trend.TrendBase;
import wickbench.testing.Meets;

/** Each door of the ledger, tried by everybody whose role does not open it (21 CFR 11.10(g)). */
class WrongRoleTest {
    private static final Set<Act> OF_THE_LEDGER =
            EnumSet.of(Act.REVIEW_READING, Act.DECIDE_ACTION, Act.PLAN_RELEASE, Act.BASE_TREND, Act.RELEASE);

    @Test
    @Meets({"21 CFR 11.10(g)", "EU GMP Annex 11 12.1 to 12.3"})
    void nobody_passes_and_nothing_is_recorded() throws IOException {
        try (Quality quality = Quality.tested()) {
            UUID positive = quality.positive("S-3", Quality.HOPPER, Strips.START.plusSeconds(7200))
                    .id();
            Map<Act, Consumer<PersonId>> doors = doors(quality, positive);
            assertThat(doors.keySet()).isEqualTo(OF_THE_LEDGER);
            int tried = 0;
            for (Map.Entry<Act, Consumer<PersonId>> door : doors.entrySet()) {
                for (PersonId who : List.of(Quality.ADA, Quality.REVIEWER, Quality.RELEASER)) {
                    if (quality.roles(who).stream().noneMatch(door.getKey().roles()::contains)) {
                        assertThat(quality.refused(() -> door.getValue().accept(who)))
                                .as("%s by %s", door.getKey(), who)
                                .isEqualTo("people.role");
                        tried++;
                    }
                }
            }
            // the administrator at all of them, reviewer and releaser at those of the other
            assertThat(tried).isEqualTo(9);
        }
    }

    private static Map<Act, Consumer<PersonId>> doors(Quality quality, UUID positive) {
        Map<Act, Consumer<PersonId>> doors = new EnumMap<>(Act.class);
        doors.put(
                Act.REVIEW_READING,
                who -> quality.reviewing.review(List.of(positive), Optional.empty(), who, Optional.empty()));
        doors.put(Act.DECIDE_ACTION, who -> quality.decide(positive, Move.DESTROY, who));
        doors.put(
                Act.PLAN_RELEASE,
                who -> quality.releasing.plan(
                        new ReleasePlan(Quality.LINE, List.of(Quality.NOZZLE), "fewer points"), who, Optional.empty()));
        doors.put(
                Act.BASE_TREND,
                who -> quality.doors
                        .trending()
                        .base(
                                new TrendBase(
                                        Optional.of(Quality.LINE),
                                        Optional.empty(),
                                        Optional.empty(),
                                        Optional.empty(),
                                        LocalDate.of(2026, 1, 1),
                                        LocalDate.of(2026, 2, 1),
                                        "a quiet month"),
                                who,
                                Optional.empty()));
        doors.put(
                Act.RELEASE,
                who -> quality.releasing.release(Subject.line(Quality.LINE), "clean", who, Optional.empty()));
        return doors;
    }
}
