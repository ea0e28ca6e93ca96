package wickbench.stations;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.authority.Actor;
import wickbench.api.clash.Clash;
import wickbench.api.journal.EntryRef;
import wickbench.api.person.PersonId;
import wickbench.api.profile.Site;
import wickbench.plant.PlantState;
import wickbench.plant.Retired;
import wickbench.plant.Stated;
import wickbench.plant.Thing;
import wickbench.plant.book.PlantDesk;
import wickbench.plant.book.PlantDoing;
import wickbench.plant.changeover.Fault;
import wickbench.plant.product.Contained;
import wickbench.plant.product.Form;
import wickbench.plant.product.Product;
import wickbench.plant.product.Soil;
import wickbench.plant.site.Line;

/** Two stations that state one thing of the plant differently. */
class PlantClashTest {
    private static final Actor QUALITY = Actor.of(new PersonId("quality"));
    private static final String OAT = "plant.product:oat";

    @TempDir
    Path root;

    private TwoStations site;
    private House bench;
    private House quality;

    @BeforeEach
    void open() throws IOException {
        site = new TwoStations(root, Duration.ZERO);
        bench = site.bench;
        quality = site.quality;
        state(bench, Stated.of(new Line("L1", "Bars", List.of(), 5, Optional.empty())));
        state(bench, Stated.of(product("plain", Optional.of(List.of()))));
        site.exchange();
    }

    @AfterEach
    void close() {
        site.close();
    }

    @Test
    void it_is_a_clash_no_change_rests_on_it_and_a_settlement_says_which_word_counts() {
        site.apart(() -> {
            state(bench, Stated.of(product("oat", holding("oats"))));
            state(quality, Stated.of(product("oat", Optional.of(List.of()))));
        });

        assertThat(quality.index.clashes()).extracting(Clash::subject).containsExactly(OAT);
        PlantState disputed = now(bench);
        assertThat(disputed.disputed(Thing.PRODUCT, "oat")).isTrue();
        assertThat(disputed.disputed(Thing.PRODUCT, "plain")).isFalse();
        assertThat(faults(bench)).contains(Fault.DISPUTED);

        EntryRef oats = bench.index.clash(OAT).orElseThrow().decisions().stream()
                .filter(ref -> ref.station().value().equals("bench"))
                .findFirst()
                .orElseThrow();
        TwoStations.settle(quality, OAT, oats);
        site.exchange();

        assertThat(faults(bench)).doesNotContain(Fault.DISPUTED);
        assertThat(now(bench).product("oat").orElseThrow().allergens()).containsExactly("oats");
        assertThat(now(quality).product("oat").orElseThrow().allergens()).containsExactly("oats");
        state(quality, Stated.of(product("oat", Optional.empty())));
        assertThat(now(quality).product("oat").orElseThrow().stated()).isFalse();
    }

    @Test
    void what_one_retired_and_another_stated_stays_until_it_is_settled() {
        state(bench, Stated.of(product("oat", holding("oats"))));
        site.exchange();
        site.apart(() -> {
            state(bench, Stated.of(product("oat", holding("oats", "milk"))));
            doing(quality).retire(new Retired(Thing.PRODUCT, "oat", "no more made"), QUALITY);
        });

        assertThat(now(quality).product("oat")).isPresent();
        assertThat(now(quality).disputed(Thing.PRODUCT, "oat")).isTrue();
        // who has seen both simply states it anew
        state(quality, Stated.of(product("oat", holding("oats", "milk"))));
        site.exchange();
        assertThat(now(bench).disputes().subjects()).isEmpty();
    }

    @Test
    void two_that_state_the_same_do_not_clash() {
        site.apart(() -> {
            state(bench, Stated.of(product("oat", holding("oats"))));
            state(quality, Stated.of(product("oat", holding("oats"))));
        });
        assertThat(quality.index.clashes()).isEmpty();
    }

    private List<Fault> faults(House house) {
        PlantState state = now(house);
        return desk(house)
                .changing("L1", house.home.clock().instant())
                .of(state.product("oat").orElseThrow(), state.product("plain").orElseThrow())
                .faults();
    }

    private static Product product(String id, Optional<List<Contained>> holds) {
        return new Product(id, id, Set.of("L1"), holds, Soil.LIGHT);
    }

    private static Optional<List<Contained>> holding(String... allergens) {
        return Optional.of(List.of(allergens).stream()
                .map(code -> new Contained(code, Form.POWDER, Optional.empty(), Optional.empty()))
                .toList());
    }

    private static void state(House house, Stated things) {
        doing(house).state(things, QUALITY);
    }

    private static PlantState now(House house) {
        return desk(house).at(house.home.clock().instant());
    }

    private static PlantDesk desk(House house) {
        return new PlantDesk(
                house.home,
                house.index,
                () -> Site.of(Optional.empty(), house.journal.founding()),
                Optional.empty(),
                Optional.empty());
    }

    private static PlantDoing doing(House house) {
        return new PlantDoing(
                house.home, house.journal, (act, draft, passphrase) -> draft, desk(house), Optional.empty());
    }
}
