package wickbench.bench.ui;

import java.time.Instant;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import wickbench.api.authority.SignIn.Secret;
import wickbench.api.owed.CleanDone;
import wickbench.api.owed.OwedItem;
import wickbench.api.owed.Step;
import wickbench.api.person.Person;
import wickbench.api.person.PersonId;
import wickbench.shell.PageContext;
import wickbench.shell.SignSheet;
import wickbench.shell.SignSheet.Asked;

/** What is done about something owed without a strip: a clean is recorded, neighbours are named, a person decides. */
final class OwedActs {
    private final PageContext context;
    private final BenchDoors doors;
    private final OwedForm form;
    private final Supplier<Optional<SiteClock>> clock;
    private final Supplier<Optional<PersonId>> by;
    private final Consumer<String> say;
    private final Runnable changed;

    /**
     * @param clock by which the site tells its times, once it is known
     * @param by who does it: at the desk, or at the bench
     * @param say hears what is asked for, what is wrong, and what was kept
     * @param changed hears that something was kept
     */
    OwedActs(
            PageContext context,
            BenchDoors doors,
            OwedForm form,
            Supplier<Optional<SiteClock>> clock,
            Supplier<Optional<PersonId>> by,
            Consumer<String> say,
            Runnable changed) {
        this.context = context;
        this.doors = doors;
        this.form = form;
        this.clock = clock;
        this.by = by;
        this.say = say;
        this.changed = changed;
    }

    static boolean cleanable(OwedDue due) {
        boolean clean = due.item().step() == Step.RE_CLEAN || due.item().step() == Step.RE_TEST && due.unclean();
        return clean && !due.item().place().isBlank();
    }

    static boolean hasNeighbours(OwedDue due) {
        return due.item().step() == Step.RE_TEST;
    }

    /** Asks for the clean of a place. */
    void clean(OwedDue due) {
        OwedItem item = due.item();
        LinkedHashMap<String, String> fields = new LinkedHashMap<>();
        fields.put(FlowWords.get("clean.procedure"), "");
        fields.put(FlowWords.get("clean.by"), by.get().map(PersonId::value).orElse(""));
        fields.put(
                FlowWords.get("clean.ended"),
                clock.get().map(SiteClock::nowTyped).orElse(""));
        form.ask(
                FlowWords.get("clean.title", item.place()),
                fields,
                this::wrongClean,
                typed -> {
                    Instant ended = clock.get().orElseThrow().past(typed.get(2));
                    doors.owed()
                            .cleaned(
                                    new CleanDone(
                                            item.place(), item.line(), typed.get(0), new PersonId(typed.get(1)), ended),
                                    by.get().orElseThrow());
                    return FlowWords.get("clean.kept", item.place());
                },
                say);
    }

    private String wrongClean(List<String> typed) {
        if (by.get().isEmpty()) {
            return FlowWords.get("owed.nobody");
        }
        if (typed.get(0).isEmpty()) {
            return FlowWords.get("clean.no-procedure");
        }
        try {
            new PersonId(typed.get(1));
            clock.get().orElseThrow().past(typed.get(2));
            return "";
        } catch (IllegalArgumentException wrong) {
            return wrong.getMessage();
        }
    }

    /** Asks for the neighbours of a place; none is an answer too. */
    void neighbours(OwedDue due) {
        OwedItem item = due.item();
        LinkedHashMap<String, String> fields = new LinkedHashMap<>();
        fields.put(
                FlowWords.get("neighbours.places"),
                String.join(
                        "; ",
                        item.missing().stream()
                                .filter(place -> !place.equals(item.place()))
                                .toList()));
        form.ask(
                FlowWords.get("neighbours.title", item.place()),
                fields,
                typed -> by.get().isEmpty() ? FlowWords.get("owed.nobody") : "",
                typed -> {
                    List<String> places = Arrays.stream(typed.get(0).split(";"))
                            .map(String::strip)
                            .filter(place -> !place.isEmpty())
                            .toList();
                    doors.owed().neighbours(item.owes(), places, by.get().orElseThrow());
                    return FlowWords.get(
                            places.isEmpty() ? "neighbours.none" : "neighbours.kept", String.join(", ", places));
                },
                say);
    }

    /** Who decides, and whether they can sign. */
    private record Signer(PersonId id, String name, boolean keyed) {}

    /** Asks a person to end it by decision, signed where the house asks for it. */
    void settle(OwedDue due) {
        Optional<PersonId> actor = context.actor();
        if (actor.isEmpty()) {
            say.accept(FlowWords.get("settle.nobody"));
            return;
        }
        context.jobs()
                .run(
                        FlowWords.get("person.asking"),
                        progress -> signer(actor.get()),
                        signer -> sheet(due.item(), signer),
                        failure -> say.accept(failure.getMessage()));
    }

    private Signer signer(PersonId id) {
        String name = doors.persons()
                .people()
                .find(id)
                .map(Person::display)
                .filter(display -> !display.equals(id.value()))
                .map(display -> BenchUiWords.get("person", display, id))
                .orElse(id.value());
        return new Signer(id, name, doors.persons().signIn().secretOf(id) == Secret.PASSPHRASE);
    }

    private void sheet(OwedItem item, Signer signer) {
        SignSheet.open(
                context,
                form.shell(),
                new Asked(
                        FlowWords.get("settle.title", OwedLine.what(item), item.place()),
                        signer.name(),
                        FlowWords.get("settle.meaning"),
                        FlowWords.get("settle.verb"),
                        Optional.of(FlowWords.get("settle.reason")),
                        signer.keyed()),
                (passphrase, reason) ->
                        doors.owed().settle(item.owes(), item.step().owed(), reason, signer.id(), passphrase),
                entry -> {
                    say.accept(FlowWords.get("settle.kept", entry));
                    changed.run();
                });
    }
}
