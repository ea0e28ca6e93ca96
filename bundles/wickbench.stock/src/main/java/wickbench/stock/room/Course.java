package wickbench.stock.room;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import wickbench.stock.Clash;
import wickbench.stock.LotMove;
import wickbench.stock.LotState;
import wickbench.stock.Quarantine;

/** The way of a lot from state to state. What the table of moves does not allow leaves it where it is, and is a clash. */
final class Course {
    private final Map<UUID, Quarantine> quarantines = new LinkedHashMap<>();
    private final List<UUID> decided = new ArrayList<>();
    private final List<Clash> clashes = new ArrayList<>();
    private final List<LotEvent.Received> deliveries = new ArrayList<>();
    private Optional<LotState> state = Optional.empty();
    private Optional<Instant> checked = Optional.empty();
    private boolean waived;
    private Optional<Instant> opened = Optional.empty();
    private Optional<String> place = Optional.empty();
    private Optional<LocalDate> until = Optional.empty();

    /** Follows what was told, in order. */
    static Course of(List<Told> told) {
        Course course = new Course();
        // a decision names what it decides on, so it applies to that wherever it stands
        told.stream()
                .map(Told::event)
                .filter(LotEvent.Released.class::isInstance)
                .forEach(event -> course.decided.addAll(((LotEvent.Released) event).quarantines()));
        told.forEach(course::take);
        course.state.filter(LotState::quarantined).ifPresent(state -> course.lift());
        return course;
    }

    private void take(Told told) {
        LotEvent event = told.event();
        if (event instanceof LotEvent.Received received) {
            receive(told, received);
        } else if (state.isEmpty()) {
            clashes.add(new Clash(told.entry(), "not-received", LotEventJson.kind(event), ""));
        } else if (event instanceof LotEvent.Quarantined quarantined) {
            quarantine(told, quarantined);
        } else if (event instanceof LotEvent.Released released) {
            release(released);
        } else if (event instanceof LotEvent.Checked check) {
            check(told, check);
        } else if (event instanceof LotEvent.Waived waived) {
            move(told, LotMove.WAIVE);
            checked(waived.at(), true);
        } else if (event instanceof LotEvent.Opened open) {
            opened = opened.or(() -> Optional.of(open.at()));
        } else if (event instanceof LotEvent.Placed placed) {
            place = Optional.of(placed.place());
        } else {
            end(told, event);
        }
    }

    /** A failed check is followed by its own rejection. */
    private void check(Told told, LotEvent.Checked check) {
        if (check.check().passed()) {
            move(told, LotMove.PASS);
            checked(check.at(), false);
        }
    }

    private void checked(Instant at, boolean waiver) {
        checked = Optional.of(at);
        waived = waiver;
    }

    private void end(Told told, LotEvent event) {
        if (event instanceof LotEvent.Rejected) {
            move(told, LotMove.REJECT);
        } else if (event instanceof LotEvent.UsedUp) {
            move(told, LotMove.USE_UP);
        } else if (event instanceof LotEvent.Destroyed) {
            move(told, LotMove.DESTROY);
        }
    }

    private void receive(Told told, LotEvent.Received received) {
        if (!deliveries.isEmpty() && !deliveries.get(0).kit().equals(received.kit())) {
            clashes.add(new Clash(
                    told.entry(), "kit", received.kit(), deliveries.get(0).kit()));
            return;
        }
        deliveries.add(received);
        checked = Optional.empty();
        waived = false;
        place = received.place().or(() -> place);
        if (state.isEmpty()) {
            state = Optional.of(LotState.AWAITING_CHECK);
        } else {
            move(told, LotMove.RECEIVE);
        }
    }

    private void quarantine(Told told, LotEvent.Quarantined event) {
        if (!decided.contains(told.id())) {
            quarantines.put(
                    told.id(),
                    new Quarantine(told.id(), told.entry(), event.at(), event.cause(), event.reason(), event.about()));
        }
        move(told, LotMove.QUARANTINE);
    }

    private void release(LotEvent.Released released) {
        until = released.until()
                .map(day -> until.filter(day::isAfter).orElse(day))
                .or(() -> until);
        lift();
    }

    /** Ends the quarantine once nothing is left to be decided on. */
    private void lift() {
        if (quarantines.isEmpty()) {
            state = state.flatMap(LotMove.RELEASE::from).or(() -> state);
        }
    }

    private void move(Told told, LotMove move) {
        LotState now = state.orElseThrow();
        Optional<LotState> next = move.from(now);
        if (next.isEmpty()) {
            clashes.add(new Clash(told.entry(), "move", move.code(), now.code()));
        }
        state = next.or(() -> state);
        // whatever else happens, an open quarantine holds
        if (!quarantines.isEmpty() && (state() == LotState.FIT || state() == LotState.AWAITING_CHECK)) {
            state = LotMove.QUARANTINE.from(state());
        }
    }

    boolean received() {
        return state.isPresent();
    }

    LotState state() {
        return state.orElseThrow();
    }

    List<LotEvent.Received> deliveries() {
        return deliveries;
    }

    List<Quarantine> quarantines() {
        return List.copyOf(quarantines.values());
    }

    List<Clash> clashes() {
        return clashes;
    }

    Optional<Instant> checked() {
        return checked;
    }

    /** Tells whether that was a waiver. */
    boolean waived() {
        return waived;
    }

    Optional<Instant> opened() {
        return opened;
    }

    Optional<String> place() {
        return place;
    }

    /** Returns the day to which decisions shortened it. */
    Optional<LocalDate> until() {
        return until;
    }
}
