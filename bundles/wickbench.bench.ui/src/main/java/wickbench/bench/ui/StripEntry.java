package wickbench.bench.ui;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.method.Method;
import wickbench.api.person.PersonId;
import wickbench.bench.run.RunStrip;
import wickbench.shell.PageContext;

/** One strip as it is entered: what its fields name, what they still lack, and the strip once they lack nothing. */
final class StripEntry {
    private static final List<Item> FIRST = List.of(Item.METHOD, Item.OPERATOR, Item.LOT, Item.SAMPLE);
    private static final List<Item> ANEW = List.of(
            Item.SAMPLE, Item.PLACE, Item.VISUAL, Item.DILUTION, Item.AREA, Item.CONTROL, Item.EXTRACTED, Item.SHAKEN);

    private final Runnable looked;
    private final EntryForm form;
    private final BenchPerson person;
    private final FormChoices offers;
    private Optional<Known> known = Optional.empty();
    private Optional<Method> method = Optional.empty();
    private FormCheck check = FormCheck.nothing();
    private String kit = "";

    /** What the fields are looked through by. */
    private record Known(Choices choices, SiteClock clock) {}

    /**
     * @param over what lists may drop over
     * @param looked hears that the fields were looked through, which every change brings about
     */
    StripEntry(Composite parent, Composite over, PageContext context, BenchDoors doors, Runnable looked) {
        this.looked = looked;
        form = new EntryForm(parent, over, context.theme(), this::look);
        person = new BenchPerson(context, doors, form, Item.OPERATOR, this::look);
        offers = new FormChoices(context, doors, form);
        context.onActor(actor -> look());
    }

    EntryForm form() {
        return form;
    }

    /** Takes what can be chosen from; before that nothing is looked through. */
    void start(Choices choices, SiteClock clock) {
        offers.begin();
        known = Optional.of(new Known(choices, clock));
        form.picks(choices.peoplePicks(), choices.methodPicks());
        choices.onlyMethod()
                .ifPresent(only -> form.put(Item.METHOD, only.ref().id().value()));
        look();
    }

    boolean known() {
        return known.isPresent();
    }

    /** Returns what can be chosen from, once it is known. */
    Optional<Choices> choices() {
        return known.map(Known::choices);
    }

    /** Looks the fields through, and says beside each what is wrong with it. */
    void look() {
        known.ifPresent(some -> look(some.choices(), some.clock()));
    }

    private void look(Choices choices, SiteClock clock) {
        Optional<Method> named = choices.method(form.text(Item.METHOD));
        if (!named.equals(method)) {
            method = named;
            named.map(Method::kit).ifPresent(this::kit);
            form.method(method);
        }
        offers.look(method, person.named(), choices);
        check = FormReader.check(new Typed(form.texts(), form.preChecks()), method, clock);
        form.say(check, method);
        looked.run();
    }

    /** A lot belongs to its kit, and does not stay when that is another. */
    private void kit(String next) {
        boolean other = !kit.isEmpty() && !kit.equals(next);
        kit = next;
        if (other) {
            form.put(Item.LOT, "");
        }
    }

    /** Returns who stands on the form, once they have been named. */
    Optional<PersonId> by() {
        return person.named();
    }

    /** Takes Enter, if it ends what names a person. */
    boolean takeEnter() {
        return person.takeEnter();
    }

    /** Tells whether no sample is being entered. */
    boolean untouched() {
        return form.text(Item.SAMPLE).isBlank();
    }

    /** Tells whether the fields lack nothing; who stands there may still have to show that it is them. */
    boolean whole() {
        return check.reading().isPresent();
    }

    /** Returns the strip under this number, if the fields lack nothing and who enters it is named. */
    Optional<RunStrip> strip(int number) {
        return check.reading()
                .filter(reading -> by().isPresent())
                .map(reading -> RunStrip.of(number, method.orElseThrow(), reading, check.clean(), drawn()));
    }

    /** Draws whether a second person is to read a strip. */
    boolean drawn() {
        return offers.drawn();
    }

    /** Returns what is still lacking, in words; empty when nothing is. */
    String needed() {
        return by().isEmpty() && !form.text(Item.OPERATOR).isBlank() ? person.words() : check.needed();
    }

    /** Makes room for the next sample; who, method and lot stay. */
    void clear() {
        ANEW.forEach(item -> form.put(item, ""));
    }

    /** Puts what stood there before; the fields that a method asks for are there only once it is known. */
    void put(RunDraft before) {
        before.texts().forEach(form::put);
        look();
        form.preChecks(before.preChecks());
        look();
    }

    /** Puts the focus where one goes on to type. */
    void focus() {
        focus(FIRST.stream()
                .filter(item -> form.text(item).isBlank())
                .findFirst()
                .orElse(Item.SAMPLE));
    }

    void focus(Item item) {
        form.control(item).setFocus();
    }
}
