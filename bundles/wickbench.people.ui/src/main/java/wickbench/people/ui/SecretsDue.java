package wickbench.people.ui;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.authority.SecretWatch;
import wickbench.api.authority.SecretWatch.Notice;
import wickbench.api.authority.SecretWatch.Notice.Ending;
import wickbench.api.authority.SecretWatch.Notice.Guessed;
import wickbench.api.person.PersonId;
import wickbench.api.profile.SiteFacts;
import wickbench.shell.Due;
import wickbench.shell.DueSource;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.Shape;

/** Says in the top bar who is being guessed at, and whose passphrase ends. */
@Component
public final class SecretsDue implements DueSource {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    /** The bar has room for a few things of everybody. */
    private static final int MOST = 2;

    private final SecretWatch watch;
    private final SiteFacts site;

    @Activate
    public SecretsDue(@Reference SecretWatch watch, @Reference SiteFacts site) {
        this.watch = watch;
        this.site = site;
    }

    @Override
    public List<Due> due() {
        return watch.now().stream().limit(MOST).map(this::due).toList();
    }

    private Due due(Notice notice) {
        if (notice instanceof Guessed guessed) {
            String who = guessed.who().map(PersonId::value).orElseGet(() -> PeopleUiWords.get("due.nobody"));
            return at(
                    new Mark(
                            PeopleUiWords.get("due.guessed", who, guessed.failures(), clock(guessed.until())),
                            Shape.TRIANGLE,
                            Meaning.ALARM),
                    guessed.who().map(PersonId::value).orElse(""));
        }
        Ending ending = (Ending) notice;
        return at(
                new Mark(PeopleUiWords.get("due.ending", ending.who(), ending.last()), Shape.TRIANGLE, Meaning.CAUTION),
                ending.who().value());
    }

    private String clock(Instant until) {
        return CLOCK.format(until.atZone(site.now().zone()));
    }

    private static Due at(Mark mark, String person) {
        return new Due(mark, "people", person);
    }
}
