package wickbench.plant.book;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.planned.PlannedTest;
import wickbench.api.planned.PlannedTests;
import wickbench.plant.PlantBook;
import wickbench.plant.programme.DueItem;
import wickbench.plant.programme.DueItem.Sample;

/** Hands the samples of what is due to the bench. */
@Component
public final class PlannedByRule implements PlannedTests {
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("MMdd-HHmm", Locale.ROOT);

    private final PlantBook book;

    @Activate
    public PlannedByRule(@Reference PlantBook book) {
        this.book = book;
    }

    @Override
    public List<PlannedTest> of(String key) {
        return book.due(book.now()).stream()
                .filter(item -> item.key().equals(key) && item.state().runnable())
                .findFirst()
                .map(this::tests)
                .orElse(List.of());
    }

    private List<PlannedTest> tests(DueItem item) {
        List<PlannedTest> tests = new ArrayList<>();
        ZoneId zone = book.zone();
        for (int i = 0; i < item.samples().size(); i++) {
            Sample sample = item.samples().get(i);
            if (sample.done().isEmpty()) {
                tests.add(new PlannedTest(
                        item.rule().line() + "-" + stamp(item.since(), zone) + "-" + (i + 1),
                        sample.what().place(),
                        Optional.of(item.rule().line()),
                        sample.what().method(),
                        item.rule().when().reason(),
                        item.about()));
            }
        }
        return tests;
    }

    /** The occasion in the label, so that no two occasions give the same one within a year. */
    private static String stamp(Instant at, ZoneId zone) {
        return STAMP.format(at.atZone(zone));
    }
}
