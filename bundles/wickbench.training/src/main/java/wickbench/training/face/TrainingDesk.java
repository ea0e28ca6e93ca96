package wickbench.training.face;

import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import wickbench.api.command.Hands;
import wickbench.api.command.Terminal;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.report.Report;
import wickbench.training.Competence;
import wickbench.training.book.Said;
import wickbench.training.book.TrainingWords;

/** What the commands of training share: who is meant, when, and how it is shown. */
abstract class TrainingDesk {
    final Doors doors;
    final Hands hands;
    final Terminal terminal;
    private final InstantSource clock;

    TrainingDesk(Doors doors, InstantSource clock, Hands hands, Terminal terminal) {
        this.doors = doors;
        this.clock = clock;
        this.hands = hands;
        this.terminal = terminal;
    }

    final int shown(Competence competence) {
        return shown(List.of(competence));
    }

    final int shown(List<Competence> competences) {
        if (terminal.json()) {
            terminal.json(Json.array(
                    competences.stream().map(TrainingJson::competence).toList()));
        } else {
            terminal.table(
                    Print.competenceHeader(),
                    competences.stream().map(Print::competenceRow).toList());
        }
        return 0;
    }

    final int printed(Path out, Report report) {
        doors.papers().print(report, out);
        terminal.note(TrainingWords.get("file.written", out));
        return 0;
    }

    /** A person who is enrolled, or anybody where nobody is yet. */
    final PersonId known(String id) {
        PersonId person = Typed.person("ID", id);
        if (!doors.people().all().isEmpty() && doors.people().find(person).isEmpty()) {
            throw Said.wrong("ID", "person.unknown", id);
        }
        return person;
    }

    final Instant now() {
        return clock.instant();
    }

    final Instant time(String field, String text) {
        return text == null ? now() : Typed.time(field, text, doors.book().zone());
    }
}
