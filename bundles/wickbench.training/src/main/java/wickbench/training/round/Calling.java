package wickbench.training.round;

import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import wickbench.api.person.PersonId;
import wickbench.training.Call;
import wickbench.training.Round;
import wickbench.training.book.Said;

/** Whether calls can be taken. */
final class Calling {
    private Calling() {}

    static void check(Round round, PersonId caller, List<Call> calls, Instant now) {
        if (calls.isEmpty()) {
            throw Said.wrong("calls", "call.none");
        }
        Set<String> before = round.callsOf(caller).stream().map(Call::code).collect(Collectors.toSet());
        Set<String> here = new HashSet<>();
        for (Call call : calls) {
            if (!round.codes().contains(call.code())) {
                throw Said.wrong("code", "call.unknown", call.code(), round.id());
            }
            if (before.contains(call.code())) {
                throw Said.refused("round.called-twice", caller, call.code());
            }
            if (!here.add(call.code())) {
                throw Said.wrong("code", "call.twice", call.code());
            }
            if (call.strip().format() != round.plan().format()) {
                throw Said.wrong("lines", "call.format", round.plan().format().code());
            }
            times(round, call, now);
        }
    }

    private static void times(Round round, Call call, Instant now) {
        call.read().filter(now::isBefore).ifPresent(read -> {
            throw Said.wrong(call.code(), "time.ahead", read);
        });
        call.elapsed().filter(java.time.Duration::isNegative).ifPresent(back -> {
            throw Said.wrong(call.code(), "call.backwards");
        });
        call.read().filter(round.opened()::isAfter).ifPresent(read -> {
            throw Said.wrong(call.code(), "call.before-opened", round.opened(), read);
        });
    }
}
