package wickbench.training.face;

import java.time.Instant;
import java.util.List;
import wickbench.api.command.Hands;
import wickbench.api.command.Terminal;
import wickbench.api.json.Json;
import wickbench.training.Round;
import wickbench.training.Rounds;
import wickbench.training.book.Said;

/** What the commands of blind rounds share: the round that is meant, and how it is shown. */
abstract class RoundDesk {
    final RoundDoors doors;
    final Rounds rounds;
    final Instant now;
    final Hands hands;
    final Terminal terminal;

    RoundDesk(RoundDoors doors, Instant now, Hands hands, Terminal terminal) {
        this.doors = doors;
        this.rounds = doors.rounds();
        this.now = now;
        this.hands = hands;
        this.terminal = terminal;
    }

    final Round known(String id) {
        return rounds.find(id).orElseThrow(() -> Said.wrong("ID", "round.unknown", id));
    }

    final int shown(Round round) {
        if (terminal.json()) {
            Json.Obj json = RoundShown.round(round);
            terminal.json(
                    json.withOptional("agreement", rounds.agreement(round.id()).map(RoundShown::agreement)));
            return 0;
        }
        RoundPrint.head(round).forEach(terminal::line);
        if (round.state() == Round.State.OPEN) {
            terminal.table(
                    Print.columns("person", "called"),
                    round.plan().callers().stream()
                            .map(person -> List.of(
                                    person.value(),
                                    round.callsOf(person).size() + "/"
                                            + round.codes().size()))
                            .toList());
        }
        if (!round.scores().isEmpty()) {
            terminal.table(
                    RoundPrint.scoreHeader(),
                    round.scores().stream().map(RoundPrint::scoreRow).toList());
        }
        rounds.agreement(round.id())
                .ifPresent(found -> RoundPrint.agreement(found).forEach(terminal::line));
        return 0;
    }
}
