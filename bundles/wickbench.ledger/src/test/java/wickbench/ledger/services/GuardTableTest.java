package wickbench.ledger.services;

import static org.assertj.core.api.Assertions.assertThat;
import static wickbench.ledger.services.Quality.ADA;
import static wickbench.ledger.services.Quality.BATCH;
import static wickbench.ledger.services.Quality.HOPPER;
import static wickbench.ledger.services.Quality.NOZZLE;
import static wickbench.ledger.services.Quality.RELEASER;
import static wickbench.ledger.services.Quality.REVIEWER;
import static wickbench.ledger.services.Quality.TESTER;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.UUID;
import java.util.function.Consumer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import wickbench.api.check.Refusal;
import wickbench.api.doubt.Doubt;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Founding;
import wickbench.api.journal.StationId;
import wickbench.api.json.Json;
import wickbench.api.lot.LotId;
import wickbench.api.method.Seen;
import wickbench.api.person.PersonId;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.RunControl;
import wickbench.journal.JournalFolder;
import wickbench.ledger.acts.Move;
import wickbench.ledger.acts.Point;
import wickbench.ledger.acts.ReleasePlan;
import wickbench.ledger.acts.Subject;
import wickbench.testing.HeardTerminal;
import wickbench.testing.Meets;

/**
 * Everything that keeps a batch, one by one: whoever tries it, by the service or by the command, is refused with the reason in words,
 * and nothing is recorded.
 */
class GuardTableTest {
    private static final Instant LATER = Strips.START.plusSeconds(7200);
    private static final List<PersonId> ALL = List.of(TESTER, REVIEWER, ADA, RELEASER);

    /** What stands in the way, by the code under which it is told. */
    private static Map<String, Consumer<Quality>> guards() {
        Map<String, Consumer<Quality>> guards = new LinkedHashMap<>();
        guards.put("release.no-plan", quality -> quality.plan());
        guards.put(
                "release.point-missing", quality -> quality.plan(NOZZLE, HOPPER, new Point("chute", NOZZLE.method())));
        guards.put(
                "release.point-invalid",
                quality -> quality.read("S-3", HOPPER, LATER, Seen.NOT_SEEN, Seen.NOT_SEEN, Optional.empty()));
        guards.put("release.point-positive", quality -> quality.positive("S-3", HOPPER, LATER));
        guards.put("release.point-in-doubt", GuardTableTest::doubt);
        guards.put(
                "release.control-missing",
                quality -> quality.negative("S-3", HOPPER, Strips.START.plusSeconds(3 * 86_400)));
        guards.put("release.control-failed", quality -> quality.control("C-2", Seen.NOT_SEEN, LATER));
        guards.put(
                "release.blank-failed",
                quality -> quality.read("K-1", NOZZLE, LATER, Seen.SEEN, Seen.SEEN, Optional.of(RunControl.BLANK)));
        guards.put(
                "release.held",
                quality -> quality.read("S-3", HOPPER, LATER, Seen.NOT_SEEN, Seen.SEEN, Optional.empty()));
        guards.put("release.destroyed", GuardTableTest::destroyed);
        guards.put("release.owed-open", quality -> quality.control("C-2", Seen.NOT_SEEN, LATER));
        guards.put("release.outside-detected", quality -> quality.reported(LATER));
        guards.put("release.clash", GuardTableTest::clash);
        guards.put(
                "release.differs",
                quality -> quality.behindOurBack("update \"ledger\".statement set lot = 'Z9' where sample = 'S-2'", 1));
        guards.put("release.station", GuardTableTest::notWhole);
        guards.put("release.stations", GuardTableTest::rewritten);
        guards.put("release.cut-off", GuardTableTest::cutOff);
        guards.put("release.unread", GuardTableTest::newer);
        guards.put("release.already", quality -> quality.release(RELEASER));
        return guards;
    }

    static Set<String> codes() {
        return guards().keySet();
    }

    @ParameterizedTest
    @MethodSource("codes")
    @Meets({"EU GMP Annex 11 2", "ISO 22000 8.8.1"})
    void nobody_passes_a_guard(String code) throws IOException {
        Consumer<Quality> what = guards().get(code);
        try (Quality quality = Quality.tested()) {
            assertThat(quality.reasons()).isEmpty();
            what.accept(quality);
            if (!code.equals("release.already")) {
                assertThat(quality.reasons()).contains(code);
            }
            for (PersonId who : ALL) {
                boolean releaser = who.equals(RELEASER) || who.equals(TESTER);
                String refused = quality.refused(() -> quality.release(who));
                assertThat(refused).as("%s by the service", who).startsWith(releaser ? "release." : "people.role");
                Said said = command(quality, who);
                assertThat(said.code()).as("%s by the command", who).isEqualTo(refused);
                if (releaser) {
                    quality.releasing
                            .standing(Subject.batch(BATCH))
                            .reasons()
                            .forEach(reason -> assertThat(said.text()).contains(reason.text()));
                }
            }
        }
    }

    /** How the command was refused. */
    private record Said(String code, String text) {}

    private static Said command(Quality quality, PersonId who) {
        HeardTerminal terminal = HeardTerminal.of(who, false);
        Object command = quality.command(terminal);
        String[] code = new String[1];
        String[] text = new String[1];
        long before = quality.entries();
        new CommandLine(command)
                .setExecutionExceptionHandler((e, called, result) -> {
                    code[0] = ((Refusal) e).code();
                    text[0] = e.getMessage();
                    return 3;
                })
                .execute("release", "batch", BATCH, "--reason", "it will be all right");
        assertThat(quality.entries()).isEqualTo(before);
        return new Said(code[0], text[0]);
    }

    private static void doubt(Quality quality) {
        quality.append(
                "lot.rejected",
                Doubt.into(Json.object(), List.of(Doubt.ofLot("lot.rejected", new LotId("A17"), Optional.empty()))));
    }

    private static void destroyed(Quality quality) {
        UUID positive = quality.positive("S-3", HOPPER, LATER).id();
        quality.decide(positive, Move.DESTROY, REVIEWER);
        quality.decide(positive, Move.DONE, "worn seal", REVIEWER);
        quality.cleared(positive, HOPPER, LATER.plusSeconds(3600));
    }

    /** Two stations plan the same line otherwise, without knowing of one another. */
    private static void clash(Quality quality) {
        try {
            Path folder = Files.createTempDirectory(quality.site.home.folder(), "other");
            Path share = Files.createDirectory(folder.resolve("share"));
            quality.site.journal.others().share(Optional.of(share));
            try (JournalFolder other = JournalFolder.open(new HomeFolder(folder.resolve("home")), entries -> {})) {
                other.found(new Founding(new StationId("quality-2"), ZoneOffset.UTC, OptionalLong.empty()));
                other.others().share(Optional.of(share));
                other.append(List.of(new Draft(
                        UUID.randomUUID(),
                        REVIEWER,
                        ReleasePlan.KIND,
                        1,
                        new ReleasePlan(Quality.LINE, List.of(NOZZLE), "fewer points").body())));
                other.checkpoint();
                other.others().exchange();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        // the first look takes in what the other station has put into the folder
        quality.reasons();
    }

    /** Another station has signed something, of which only the checkpoint is in the folder so far. */
    private static void notWhole(Quality quality) {
        beside(quality, there -> Files.delete(there.resolve("entries-000000.jsonl")));
    }

    /** The first entry of another station is rewritten before it is ever seen here. */
    private static void rewritten(Quality quality) {
        beside(quality, there -> {
            Path entries = there.resolve("entries-000000.jsonl");
            Files.writeString(
                    entries,
                    Files.readString(entries).replaceFirst("\"key_fingerprint\":\"", "\"key_fingerprint\":\"0"));
        });
    }

    /** Does something to a folder. */
    private interface Hand {
        void on(Path folder) throws IOException;
    }

    /** Another station puts what it signed into a shared folder, and somebody changes it there before this one looks. */
    private static void beside(Quality quality, Hand hand) {
        try {
            Path folder = Files.createTempDirectory(quality.site.home.folder(), "other");
            Path share = Files.createDirectory(folder.resolve("share"));
            try (JournalFolder other = JournalFolder.open(new HomeFolder(folder.resolve("home")), entries -> {})) {
                other.found(new Founding(new StationId("quality-2"), ZoneOffset.UTC, OptionalLong.empty()));
                other.others().share(Optional.of(share));
                other.checkpoint();
                other.others().exchange();
            }
            hand.on(share.resolve("quality-2"));
            quality.site.journal.others().share(Optional.of(share));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void cutOff(Quality quality) {
        try {
            Path folder = Files.createTempDirectory(quality.site.home.folder(), "gone");
            Path share = Files.createDirectory(folder.resolve("share"));
            quality.site.journal.others().share(Optional.of(share));
            quality.reasons();
            Files.move(share, folder.resolve("away"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void newer(Quality quality) {
        quality.site.journal.append(List.of(new Draft(
                UUID.randomUUID(),
                TESTER,
                RecordedReading.KIND,
                RecordedReading.VERSION + 1,
                Json.object().with("new", "thing"))));
    }
}
