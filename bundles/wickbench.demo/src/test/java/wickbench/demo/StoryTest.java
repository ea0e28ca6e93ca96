package wickbench.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import wickbench.api.lot.LotId;
import wickbench.api.person.PersonId;
import wickbench.api.words.Words;

class StoryTest {
    private final Plant plant = DemoFiles.plant();
    private final Span span = new Span(LocalDate.of(2025, 3, 1), LocalDate.of(2026, 3, 1), ZoneId.of("Europe/Vienna"));
    private final Lots lots = new Lots(span.from());
    private final Story story = Story.of(plant, span, lots);

    @Test
    void hazelnut_stays_at_two_points_for_eight_months() {
        Plant.Kit hazelnut = plant.kits().get(0);
        List<String> more = plant.lines().stream()
                .flatMap(line -> line.points().stream())
                .filter(point -> story.moreResidue(point, hazelnut, span.startOf(LocalDate.of(2025, 9, 1))) > 0)
                .map(Plant.Point::name)
                .toList();

        assertThat(more).containsExactlyInAnyOrderElementsOf(StubbornChangeover.PLACES);
        assertThat(plant.lines().stream().flatMap(line -> line.points().stream()))
                .allSatisfy(point -> assertThat(
                                story.moreResidue(point, hazelnut, span.startOf(LocalDate.of(2025, 12, 1))))
                        .isZero());
    }

    @Test
    void one_lot_of_one_kit_is_poor() {
        List<LotId> poor = plant.kits().stream()
                .flatMap(kit -> span.days().stream()
                        .map(day -> lots.inUse(kit, day))
                        .distinct()
                        .filter(lot -> story.invalidRate(kit, lot) > kit.invalidRate()))
                .toList();

        assertThat(poor).hasSize(1).allMatch(lot -> lot.value().startsWith("MK-"));
    }

    @Test
    void one_operator_overlooks_faint_lines_until_trained_again() {
        List<PersonId> careless = plant.operators().stream()
                .filter(each -> story.missesFaint(each, span.startOf(LocalDate.of(2025, 11, 1))) > 0.1)
                .toList();

        assertThat(careless).containsExactly(new PersonId("op-07"));
        assertThat(plant.operators())
                .allMatch(each -> story.missesFaint(each, span.startOf(LocalDate.of(2026, 1, 1))) < 0.1);
    }

    @Test
    void every_chapter_has_its_sentence() {
        Words words = Words.of(Story.class, "demo");

        assertThat(story.told())
                .hasSize(3)
                .allSatisfy(told ->
                        assertThat(told.sentence(words)).contains("0 of 0").doesNotContain("{"));
    }
}
