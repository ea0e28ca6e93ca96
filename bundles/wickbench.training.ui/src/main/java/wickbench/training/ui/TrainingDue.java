package wickbench.training.ui;

import java.util.Arrays;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.home.Home;
import wickbench.shell.Due;
import wickbench.shell.DueSource;
import wickbench.training.Competences;
import wickbench.training.Due.What;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.Shape;

/** What the training book asks for: one word for each kind of thing, with how often. */
@Component
public final class TrainingDue implements DueSource {
    private static final int MOST = 3;
    private static final String PAGE = "training";

    private final Home home;
    private final Competences competences;

    @Activate
    public TrainingDue(@Reference Home home, @Reference Competences competences) {
        this.home = home;
        this.competences = competences;
    }

    @Override
    public List<Due> due() {
        if (!home.isBegun()) {
            return List.of();
        }
        List<wickbench.training.Due> all = competences.due(home.clock().instant());
        return Arrays.stream(What.values())
                // nothing is late about a suspension; the matrix shows it
                .filter(what -> what != What.SUSPENDED)
                .map(what -> all.stream().filter(due -> due.what() == what).toList())
                .filter(some -> !some.isEmpty())
                .limit(MOST)
                .map(TrainingDue::due)
                .toList();
    }

    private static Due due(List<wickbench.training.Due> some) {
        wickbench.training.Due first = some.get(0);
        String key = "due." + first.what().code();
        String word = some.size() == 1
                ? TrainingUiWords.get(key, first.person(), first.about())
                : TrainingUiWords.get(key + ".many", some.size());
        return new Due(mark(first.what(), word), PAGE, place(some));
    }

    private static Mark mark(What what, String word) {
        return switch (what) {
            case SETTLE -> new Mark(word, Shape.TRIANGLE, Meaning.ALARM);
            case LAPSED -> new Mark(word, Shape.CROSS, Meaning.CAUTION);
            case ACKNOWLEDGE -> new Mark(word, Shape.DIAMOND, Meaning.CAUTION);
            default -> new Mark(word, Shape.SQUARE, Meaning.NOTICE);
        };
    }

    /** The one person or round that is meant, or the tab where all of them stand. */
    private static String place(List<wickbench.training.Due> some) {
        wickbench.training.Due first = some.get(0);
        return switch (first.what()) {
            case CALL, SCORE -> Tab.ROUNDS.code() + ":" + first.about();
            case SIGN, LIGHT -> Tab.ROUNDS.code();
            default -> some.size() == 1 ? first.person() : Tab.SKILLS.code();
        };
    }
}
