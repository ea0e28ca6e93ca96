package wickbench.stock.ui;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import wickbench.api.lot.LotId;
import wickbench.shell.PageContext;
import wickbench.shell.SignSheet;
import wickbench.shell.SignSheet.Asked;
import wickbench.stock.Actor;
import wickbench.stock.Balance;
import wickbench.stock.Count;
import wickbench.stock.Lot;
import wickbench.stock.LotCheck;
import wickbench.widgets.Field;
import wickbench.widgets.Meaning;
import wickbench.widgets.Work;

/** The forms of what can be done with a lot. */
final class LotForms {
    private final PageContext context;
    private final StockDoors doors;
    private final Rights rights;
    private final List<String> fridges;
    private final Runnable grown;
    private final Runnable leave;
    private final Consumer<String> done;
    private Shell window;

    /**
     * Forms for whoever has the desk.
     *
     * @param leave told when nothing shall be done after all
     * @param done hears, in words, what was done
     */
    LotForms(
            PageContext context,
            StockDoors doors,
            LotDesk.Known known,
            Runnable grown,
            Runnable leave,
            Consumer<String> done) {
        this.context = context;
        this.doors = doors;
        this.rights = known.rights();
        this.fridges = known.fridges();
        this.grown = grown;
        this.leave = leave;
        this.done = done;
    }

    void open(Composite parent, LotAct act, Lot lot) {
        String key = "act." + act.code();
        window = parent.getShell();
        ActForm form = new ActForm(
                parent, context, key, grown, leave, lot.id(), lot.kit().name());
        switch (act) {
            case CHECK -> check(form, key, lot);
            case OPEN -> pouch(form, key, lot);
            case TAKE -> take(form, key, lot);
            case COUNT -> count(form, key, lot);
            case PLACE -> place(form, key, lot);
            case USED_UP ->
                form.act(
                        key + ".act",
                        rights.may(act.act()),
                        () -> work(by -> doors.keeping().usedUp(lot.id(), by)),
                        said(key));
            case QUARANTINE ->
                reasoned(form, act, reason -> by -> doors.keeping().quarantine(lot.id(), reason, by));
            case RELEASE -> release(form, key, lot);
            case WAIVE -> signed(form, act, lot, (reason, by) -> doors.keeping().waive(lot.id(), reason, by));
            case REJECT ->
                signed(form, act, lot, (reason, by) -> doors.keeping().reject(lot.id(), Optional.empty(), reason, by));
            case DESTROY ->
                signed(form, act, lot, (reason, by) -> doors.keeping().destroy(lot.id(), reason, by));
        }
        form.focus();
    }

    private Consumer<Lot> said(String key) {
        return lot -> done.accept(StockUiWords.get(key + ".done", lot.id()));
    }

    private <T> Optional<Work<T>> work(Function<Actor, T> act) {
        Actor by = rights.by();
        return Optional.of(progress -> act.apply(by));
    }

    private void check(ActForm form, String key, Lot lot) {
        var rule = lot.kit().check();
        form.note(
                Meaning.NOTICE,
                StockUiWords.get(
                        "check.rule", rule.blanks(), rule.lowPositives(), rule.mostWrong(), rule.mostInvalid()));
        form.<LotCheck>act(
                key + ".act",
                rights.may(LotAct.CHECK.act()),
                () -> work(by -> doors.keeping().check(lot.id(), by)),
                check -> done.accept(StockUiWords.get(
                        check.passed() ? "check.passed" : "check.failed",
                        lot.id(),
                        check.blanks(),
                        check.lowPositives(),
                        check.wrong(),
                        check.invalid())));
    }

    private void pouch(ActForm form, String key, Lot lot) {
        Map<String, Field<Text>> liquids = new LinkedHashMap<>();
        if (lot.kit().mayMix()) {
            lot.parts().stream()
                    .skip(1)
                    .map(balance -> balance.part().name())
                    .forEach(name -> liquids.put(name, form.named(StockUiWords.get("open.with", name))));
        }
        form.act(
                key + ".act",
                rights.may(LotAct.OPEN.act()),
                () -> {
                    Map<String, LotId> with = new LinkedHashMap<>();
                    liquids.forEach((name, field) -> Typed.some(field).ifPresent(id -> with.put(name, new LotId(id))));
                    Instant now = doors.clock().instant();
                    return work(by -> doors.keeping().open(lot.id(), now, with, by));
                },
                said(key));
    }

    private void take(ActForm form, String key, Lot lot) {
        List<String> names =
                lot.parts().stream().map(balance -> balance.part().name()).toList();
        Field<Combo> part = form.choice("take.part", names);
        part.control().select(0);
        Field<Text> amount = form.text("take.amount", "1");
        Field<Text> reason = form.text("form.reason");
        form.act(
                key + ".act",
                rights.may(LotAct.TAKE.act()),
                () -> {
                    Optional<BigDecimal> much = Typed.amount(amount);
                    Optional<String> why = Typed.words(reason);
                    String name = part.control().getText();
                    return much.isEmpty() || why.isEmpty()
                            ? Optional.<Work<Lot>>empty()
                            : work(by -> doors.keeping().take(lot.id(), name, much.get(), why.get(), by));
                },
                said(key));
    }

    private void count(ActForm form, String key, Lot lot) {
        Balance strips = lot.strips();
        form.note(
                Meaning.NOTICE,
                StockUiWords.get(
                        "count.expected",
                        lot.sealedPouches(),
                        LotTable.plain(strips.open()),
                        LotTable.plain(strips.left())));
        Field<Text> pouches = form.text("count.pouches");
        Field<Text> loose = form.text("count.loose");
        Map<String, Field<Text>> others = new LinkedHashMap<>();
        lot.parts().stream()
                .skip(1)
                .forEach(part -> others.put(
                        part.part().name(),
                        form.named(StockUiWords.get(
                                "count.other", part.part().name(), part.part().unit()))));
        Field<Text> reason = form.text("count.reason");
        form.act(
                key + ".act",
                rights.may(LotAct.COUNT.act()),
                () -> {
                    Optional<Integer> sealed = Typed.whole(pouches, 0);
                    Optional<Integer> open = Typed.whole(loose, 0);
                    Map<String, BigDecimal> amounts = new LinkedHashMap<>();
                    boolean right = true;
                    for (var other : others.entrySet()) {
                        if (Typed.some(other.getValue()).isPresent()) {
                            Optional<BigDecimal> amount = Typed.amount(other.getValue());
                            amount.ifPresent(found -> amounts.put(other.getKey(), found));
                            right &= amount.isPresent();
                        }
                    }
                    if (sealed.isEmpty() || open.isEmpty() || !right) {
                        return Optional.<Work<Lot>>empty();
                    }
                    Count count = new Count(
                            lot.id(), doors.clock().instant(), sealed.get(), open.get(), amounts, Typed.some(reason));
                    return work(by -> doors.keeping().count(count, by));
                },
                said(key));
    }

    private void place(ActForm form, String key, Lot lot) {
        Field<Combo> fridge = form.choice("receive.fridge", fridges);
        lot.place().ifPresent(fridge.control()::setText);
        form.act(
                key + ".act",
                rights.may(LotAct.PLACE.act()),
                () -> {
                    String id = fridge.control().getText();
                    Instant now = doors.clock().instant();
                    return work(by -> doors.keeping().place(lot.id(), id, now, by));
                },
                said(key));
    }

    private void reasoned(ActForm form, LotAct act, Function<String, Function<Actor, Lot>> how) {
        Field<Text> reason = form.text("form.reason");
        String key = "act." + act.code();
        form.act(
                key + ".act",
                rights.may(act.act()),
                () -> Typed.words(reason).flatMap(why -> work(how.apply(why))),
                said(key));
    }

    /** What is done with a reason by somebody who signs. */
    private interface Deed {
        Lot by(String reason, Actor actor);
    }

    private void signed(ActForm form, LotAct act, Lot lot, Deed deed) {
        Field<Text> reason = form.text("form.reason");
        form.button(
                "act." + act.code() + ".act",
                rights.may(act.act()),
                () -> Typed.words(reason).ifPresent(why -> sign(act, lot, by -> deed.by(why, by))));
    }

    private void release(ActForm form, String key, Lot lot) {
        Field<Text> until = form.text("release.until");
        until.hint(StockUiWords.get("release.until.hint", lot.effective()));
        Field<Text> reason = form.text("form.reason");
        form.button(key + ".act", rights.may(LotAct.RELEASE.act()), () -> {
            Optional<LocalDate> day = Typed.some(until).isEmpty() ? Optional.empty() : Typed.date(until);
            boolean wrong = Typed.some(until).isPresent() && day.isEmpty();
            Optional<String> why = Typed.words(reason);
            if (!wrong && why.isPresent()) {
                sign(LotAct.RELEASE, lot, by -> doors.keeping().release(lot.id(), day, why.get(), by));
            }
        });
    }

    private void sign(LotAct act, Lot lot, Function<Actor, Lot> deed) {
        var who = rights.actor().orElseThrow();
        String key = "act." + act.code();
        SignSheet.<Lot>open(
                context,
                window,
                new Asked(
                        StockUiWords.get(key + ".sheet", lot.id()),
                        rights.who(who),
                        StockUiWords.get(key + ".meaning"),
                        StockUiWords.get(key + ".verb"),
                        Optional.empty(),
                        rights.keyed()),
                (passphrase, reason) -> deed.apply(new Actor(who, passphrase)),
                said(key));
    }
}
