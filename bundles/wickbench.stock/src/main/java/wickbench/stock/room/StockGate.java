package wickbench.stock.room;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.gate.Answer;
import wickbench.api.gate.Answer.Reason;
import wickbench.api.gate.Gate;
import wickbench.api.gate.Question;
import wickbench.api.profile.SiteProfile;
import wickbench.stock.Cause;
import wickbench.stock.Device;
import wickbench.stock.Lot;
import wickbench.stock.LotState;
import wickbench.stock.Quarantine;
import wickbench.stock.room.StockView.Topic;

/** The stock room's say on whether a strip may be started. */
@Component
public final class StockGate implements Gate {
    static final String NEIGHBOUR = "stock";

    private final Shelves shelves;
    private final SiteProfile profile;

    @Activate
    public StockGate(@Reference Shelves shelves, @Reference SiteProfile profile) {
        this.shelves = shelves;
        this.profile = profile;
    }

    @Override
    public String neighbour() {
        return NEIGHBOUR;
    }

    @Override
    public Answer ask(Question question) {
        Optional<Lot> lot = shelves.lot(question.lot(), question.at());
        if (lot.isPresent()) {
            return answer(lot.get(), question);
        }
        return knewAnyLot(question.at())
                ? new Answer.Refused(
                        NEIGHBOUR, Map.of(), List.of(new Reason("lot.not-checked-in", "not received", "received")))
                : new Answer.NotChecked(NEIGHBOUR, required(question.at()));
    }

    /** Before the first lot was received here, this stock room was not kept, so it has nothing to say. */
    private boolean knewAnyLot(Instant at) {
        return shelves.read(false, events -> events.any(Topic.LOT, at));
    }

    private boolean required(Instant at) {
        return profile.inForce(at)
                .filter(held -> held.requiredChecks().contains(NEIGHBOUR))
                .isPresent();
    }

    private Answer answer(Lot lot, Question question) {
        Asked asked = new Asked(lot, question, LocalDate.ofInstant(question.at(), shelves.zone()));
        List<Reason> reasons = Stream.<Function<Asked, Optional<Reason>>>of(
                        StockGate::outOfDate,
                        StockGate::notCheckedIn,
                        StockGate::quarantined,
                        StockGate::badlyStored,
                        StockGate::oldPouch,
                        StockGate::noneLeft,
                        this::otherKit,
                        this::otherInsert,
                        this::overdue)
                .flatMap(rule -> rule.apply(asked).stream())
                .toList();
        Map<String, String> facts = facts(lot);
        return reasons.isEmpty()
                ? new Answer.Cleared(NEIGHBOUR, facts)
                : new Answer.Refused(NEIGHBOUR, facts, new ArrayList<>(reasons));
    }

    /** What the rules look at. */
    private record Asked(Lot lot, Question question, LocalDate day) {}

    private static Optional<Reason> outOfDate(Asked asked) {
        Lot lot = asked.lot();
        return Optional.of(new Reason("lot.expired", lot.effective().toString(), "not before " + asked.day()))
                .filter(reason -> lot.expired(asked.day()));
    }

    /** A strip that checks the lot comes before the check. */
    private static Optional<Reason> notCheckedIn(Asked asked) {
        LotState state = asked.lot().state();
        boolean waits = state == LotState.AWAITING_CHECK || state == LotState.QUARANTINED_UNCHECKED;
        return Optional.of(new Reason("lot.not-checked-in", state.code(), "checked"))
                .filter(reason ->
                        state == LotState.REJECTED || waits && !asked.question().lotCheck());
    }

    private static Optional<Reason> quarantined(Asked asked) {
        LotState state = asked.lot().state();
        boolean stated = asked.lot().quarantines().stream()
                .anyMatch(each -> !each.cause().storage());
        return Optional.of(new Reason("lot.quarantined", state.code(), "released"))
                .filter(reason -> state == LotState.DESTROYED || state.quarantined() && stated);
    }

    private static Optional<Reason> badlyStored(Asked asked) {
        String causes = asked.lot().quarantines().stream()
                .map(Quarantine::cause)
                .filter(Cause::storage)
                .map(Cause::code)
                .distinct()
                .collect(Collectors.joining(", "));
        return Optional.of(new Reason("lot.storage", causes, "a signed decision"))
                .filter(reason -> asked.lot().state().quarantined() && !causes.isEmpty());
    }

    private static Optional<Reason> oldPouch(Asked asked) {
        Lot lot = asked.lot();
        return lot.kit()
                .pouchHours()
                .flatMap(hours -> lot.pouch()
                        .map(opened -> Duration.between(opened, asked.question().at()))
                        .filter(age -> age.compareTo(Duration.ofHours(hours)) > 0)
                        .map(age -> new Reason("lot.pouch-age", age.toHours() + " h", "at most " + hours + " h")));
    }

    private static Optional<Reason> noneLeft(Asked asked) {
        Lot lot = asked.lot();
        boolean none = lot.state() == LotState.USED_UP || lot.strips().left().signum() == 0;
        return Optional.of(new Reason(
                        "lot.none-left", lot.strips().missing().toPlainString() + " beyond the count", "a strip"))
                .filter(reason -> none);
    }

    /** A method is written for one kit; the times and limits of another are not its own. */
    private Optional<Reason> otherKit(Asked asked) {
        String kit = asked.lot().kit().name();
        List<String> written = inserts().kits(asked.question().method());
        return written.isEmpty() || written.contains(kit)
                ? Optional.empty()
                : Optional.of(new Reason("lot.other-kit", kit, String.join(", ", written)));
    }

    /** A new insert may have changed times, amounts or limits; somebody compares it, and the strip stands meanwhile. */
    private Optional<Reason> otherInsert(Asked asked) {
        Lot lot = asked.lot();
        List<String> written = inserts().of(asked.question().method(), lot.kit());
        return lot.insert()
                .filter(found -> written.stream().anyMatch(revision -> !revision.equals(found)))
                .map(found -> new Reason("lot.other-insert", found, String.join(", ", written)));
    }

    private Inserts inserts() {
        return shelves.read(Inserts.NONE, Events::inserts);
    }

    /** Equipment out of calibration is to be minded and refuses nothing. */
    private Optional<Reason> overdue(Asked asked) {
        Instant at = asked.question().at();
        List<Device> overdue = shelves.read(List.of(), events -> DeviceRows.overdue(events, asked.day(), at));
        return overdue.isEmpty()
                ? Optional.empty()
                : Optional.of(new Reason(
                        "equipment.overdue",
                        overdue.stream()
                                .map(device -> device.id() + " due " + device.due())
                                .collect(Collectors.joining(", ")),
                        "calibrated"));
    }

    private static Map<String, String> facts(Lot lot) {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("kit", lot.kit().name());
        facts.put("label_expiry", lot.label().toString());
        facts.put("effective_expiry", lot.effective().toString());
        facts.put("state", lot.state().code());
        if (lot.waived()) {
            facts.put("check", "waived");
        }
        facts.put("strips_left", lot.strips().left().toPlainString());
        lot.pouch().ifPresent(opened -> facts.put("pouch_opened", opened.toString()));
        lot.insert().ifPresent(insert -> facts.put("insert_revision", insert));
        return facts;
    }
}
