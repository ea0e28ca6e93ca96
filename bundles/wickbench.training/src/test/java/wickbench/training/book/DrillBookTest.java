package wickbench.training.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.authority.Actor;
import wickbench.api.check.BadInput;
import wickbench.api.journal.Entry;
import wickbench.drill.Drill;
import wickbench.drill.DrillPlan;
import wickbench.drill.DrillResult;
import wickbench.testing.Schemas;
import wickbench.training.CompetenceState;
import wickbench.training.DrillRun;
import wickbench.training.Drilled;
import wickbench.training.TrainingHome;

class DrillBookTest {
    private static final Actor OP = Actor.of(TrainingHome.OP);
    private static final DrillPlan SHORT = new DrillPlan(2, 1, 8, 16, 1.6);

    @TempDir
    private Path folder;

    private TrainingHome home;
    private DrillBook drills;

    @BeforeEach
    void found() {
        home = new TrainingHome(folder);
        drills = new DrillBook(home.book, home.pen);
    }

    @AfterEach
    void close() {
        home.close();
    }

    @Test
    void keeps_what_the_answers_come_to_as_the_schema_says() throws IOException {
        DrillRun run = run(drills.seed());
        DrillResult found = run.drill().result();
        Drilled kept = drills.keep(run, OP);
        assertThat(kept.threshold()).isEqualTo(found.threshold(), org.assertj.core.data.Offset.offset(1e-12));
        assertThat(kept.upper()).isEqualTo(found.upper(), org.assertj.core.data.Offset.offset(1e-12));
        assertThat(kept.strips()).isEqualTo(found.strips());
        assertThat(kept.alarms()).isEqualTo(found.alarms());
        assertThat(kept.cautions()).isEqualTo(found.cautions());
        Entry entry = last();
        assertThat(entry.kind()).isEqualTo("drill.done");
        assertThat(Schemas.published()
                        .errors("drill.done-1.schema.json", entry.body().canonical()))
                .isEmpty();
    }

    @Test
    void a_kept_drill_is_reckoned_again_to_the_same() {
        DrillRun run = run(7);
        drills.keep(run, OP);
        Entry entry = last();
        DrillRun again = DrillJson.run(entry.ref(), entry.body());
        assertThat(again).isEqualTo(run);
        assertThat(DrillJson.write(again, again.drill().result(), TrainingHome.OP, home.clock.instant())
                        .canonical())
                .isEqualTo(entry.body().canonical());
    }

    @Test
    void drills_stand_in_the_persons_file_and_authorise_nobody() {
        home.issued();
        drills.keep(run(3), OP);
        drills.keep(run(4), OP);
        drills.keep(run(5), Actor.of(TrainingHome.OTHER));
        assertThat(drills.of(TrainingHome.OP))
                .hasSize(2)
                .allMatch(each -> each.person().equals(TrainingHome.OP));
        assertThat(home.records.person(TrainingHome.OP, home.clock.instant()).happenings())
                .filteredOn(each -> each.entry().kind().equals(Kinds.DRILLED))
                .hasSize(2);
        assertThat(home.now(TrainingHome.OP).state()).isEqualTo(CompetenceState.NEVER);
    }

    @Test
    void a_drill_that_is_not_over_or_went_on_is_refused_and_nothing_kept() {
        DrillRun run = run(3);
        int before = home.entries().size();
        DrillRun cut = new DrillRun(SHORT, 3, 8, run.answers().subList(0, 5));
        assertThatThrownBy(() -> drills.keep(cut, OP))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("expected a drill that is over, found 5 answers");
        List<Boolean> more = new ArrayList<>(run.answers());
        more.add(true);
        assertThatThrownBy(() -> drills.keep(new DrillRun(SHORT, 3, 8, more), OP))
                .isInstanceOf(BadInput.class);
        assertThat(home.entries()).hasSize(before);
    }

    private Entry last() {
        List<Entry> entries = home.entries();
        return entries.get(entries.size() - 1);
    }

    /** Whoever sees lines from 2 % on. */
    private static DrillRun run(long seed) {
        Drill drill = Drill.start(SHORT, seed);
        List<Boolean> answers = new ArrayList<>();
        while (!drill.over()) {
            boolean seen = drill.next().orElseThrow().contrast() > 0.02;
            answers.add(seen);
            drill = drill.answered(seen);
        }
        return new DrillRun(SHORT, seed, 8, answers);
    }
}
