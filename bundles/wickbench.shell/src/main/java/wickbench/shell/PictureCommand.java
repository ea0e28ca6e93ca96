package wickbench.shell;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.eclipse.swt.graphics.Point;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.command.CommandSet;
import wickbench.api.command.Terminal;
import wickbench.api.person.PersonId;

/** The command that takes a picture of a page. */
@Component(property = {CommandSet.NAME + "=picture", CommandSet.ALONE + "=true"})
public final class PictureCommand implements CommandSet {
    private static final int FOUND_WANTING = 1;

    private final Places places;
    private final Neighbours neighbours;

    @Activate
    public PictureCommand(@Reference Places places, @Reference Neighbours neighbours) {
        this.places = places;
        this.neighbours = neighbours;
    }

    @Override
    public Object commands(Terminal terminal) {
        return new Picture(terminal);
    }

    /** One call of the command. */
    @Command(name = "picture")
    final class Picture implements Callable<Integer> {
        private final Terminal terminal;

        @Option(names = "--page", required = true, paramLabel = "ID")
        private String page;

        @Option(names = "--size", defaultValue = "1280x800", paramLabel = "WxH")
        private String size;

        @Option(names = "--theme", defaultValue = "light", paramLabel = "light|dark")
        private String theme;

        @Option(names = "--zoom", defaultValue = "100", paramLabel = "PERCENT")
        private int zoom;

        @Option(names = "--select", paramLabel = "THING")
        private String select;

        @Option(names = "--out", required = true, paramLabel = "FILE")
        private Path out;

        @Option(names = "--whole")
        private boolean whole;

        Picture(Terminal terminal) {
            this.terminal = terminal;
        }

        @Override
        public Integer call() {
            PictureTaker taker = new PictureTaker(places, neighbours, new Session(enrolled(terminal.actor())));
            Point written =
                    taker.take(new PictureTaker.Wanted(page, Optional.ofNullable(select), looks(), pixels()), out);
            terminal.line(ShellWords.get("picture.written", out, written.x, written.y));
            if (whole) {
                taker.cutOff().forEach(words -> terminal.note(ShellWords.get("picture.cut-off", words)));
            }
            return whole && !taker.cutOff().isEmpty() ? FOUND_WANTING : 0;
        }

        /** Only who is enrolled can have signed in; the account of the machine has not. */
        private Optional<PersonId> enrolled(Optional<PersonId> actor) {
            return actor.filter(
                    id -> neighbours.people().flatMap(people -> people.find(id)).isPresent());
        }

        private Looks looks() {
            boolean dark = theme.equals("dark");
            if (!dark && !theme.equals("light")) {
                throw bad("--theme", ShellWords.get("picture.bad-theme", theme));
            }
            if (!Looks.SIZES.contains(zoom)) {
                throw bad("--zoom", ShellWords.get("picture.bad-zoom", zoom, Looks.SIZES));
            }
            return new Looks(dark, zoom);
        }

        private Point pixels() {
            if (!size.matches("[1-9][0-9]{2,3}x[1-9][0-9]{2,3}")) {
                throw bad("--size", ShellWords.get("picture.bad-size", size));
            }
            String[] sides = size.split("x");
            return new Point(Integer.parseInt(sides[0]), Integer.parseInt(sides[1]));
        }

        private static BadInput bad(String option, String text) {
            return new BadInput(Complaint.of("picture", option, text));
        }
    }
}
