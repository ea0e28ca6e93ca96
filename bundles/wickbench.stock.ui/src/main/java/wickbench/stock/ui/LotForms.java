package wickbench.stock.ui;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import wickbench.api.lot.LotId;
import wickbench.shell.ActForm;
import wickbench.shell.PageContext;
import wickbench.stock.Lot;
import wickbench.stock.LotCheck;
import wickbench.widgets.Field;
import wickbench.widgets.Meaning;
import wickbench.widgets.Typed;
import wickbench.widgets.Work;

/** The forms of what can be done with a lot. */
final class LotForms {
    private final PageContext context;
    private final StockDoors doors;
    private final LotDesk.Shown shown;
    private final Runnable grown;
    private final Runnable leave;
    private final Consumer<String> done;

    /**
     * Forms for whoever has the desk.
     *
     * @param leave told when nothing shall be done after all
     * @param done hears, in words, what was done
     */
    LotForms(
            PageContext context,
            StockDoors doors,
            LotDesk.Shown shown,
            Runnable grown,
            Runnable leave,
            Consumer<String> done) {
        this.context = context;
        this.doors = doors;
        this.shown = shown;
        this.grown = grown;
        this.leave = leave;
        this.done = done;
    }

    void open(Composite parent, LotAct act) {
        Lot lot = shown.lot();
        String key = "act." + act.code();
        LotHands hands = new LotHands(context, doors, shown.known().rights(), parent.getShell(), done);
        ActForm form = Forms.begin(
                parent, context, key, grown, leave, lot.id(), lot.kit().name());
        switch (act) {
            case CHECK -> check(form, key, lot, hands);
            case OPEN -> pouch(form, key, lot, hands);
            case TAKE -> take(form, key, lot, hands);
            case COUNT -> CountForm.fill(form, key, lot, hands);
            case PLACE -> place(form, key, lot, hands);
            case USED_UP ->
                form.act(
                        key + ".act",
                        hands.may(act.act()),
                        () -> hands.work(by -> hands.keeping().usedUp(lot.id(), by)),
                        hands.said(key));
            case QUARANTINE -> quarantine(form, key, lot, hands);
            case RELEASE -> DecisionForms.release(form, key, lot, hands);
            case WAIVE ->
                DecisionForms.reasoned(
                        form, act, lot, hands, (why, by) -> hands.keeping().waive(lot.id(), why, by));
            case REJECT ->
                DecisionForms.reject(form, key, lot, shown.known().times().zone(), hands);
            case DESTROY ->
                DecisionForms.reasoned(
                        form, act, lot, hands, (why, by) -> hands.keeping().destroy(lot.id(), why, by));
            case SETTLE -> DecisionForms.settle(form, shown, hands);
        }
        form.focus();
    }

    private static void quarantine(ActForm form, String key, Lot lot, LotHands hands) {
        Field<Text> reason = form.text("form.reason");
        form.act(
                key + ".act",
                hands.may(LotAct.QUARANTINE.act()),
                () -> Typed.words(reason)
                        .flatMap(why -> hands.work(by -> hands.keeping().quarantine(lot.id(), why, by))),
                hands.said(key));
    }

    private void check(ActForm form, String key, Lot lot, LotHands hands) {
        var rule = lot.kit().check();
        form.note(
                Meaning.NOTICE,
                StockUiWords.get(
                        "check.rule", rule.blanks(), rule.lowPositives(), rule.mostWrong(), rule.mostInvalid()));
        form.<LotCheck>act(
                key + ".act",
                hands.may(LotAct.CHECK.act()),
                () -> hands.work(by -> hands.keeping().check(lot.id(), by)),
                check -> done.accept(StockUiWords.get(
                        check.passed() ? "check.passed" : "check.failed",
                        lot.id(),
                        check.blanks(),
                        check.lowPositives(),
                        check.wrong(),
                        check.invalid())));
    }

    private void pouch(ActForm form, String key, Lot lot, LotHands hands) {
        Map<String, Field<Text>> liquids = new LinkedHashMap<>();
        if (lot.kit().mayMix()) {
            lot.parts().stream()
                    .skip(1)
                    .map(balance -> balance.part().name())
                    .forEach(name -> liquids.put(name, form.named(StockUiWords.get("open.with", name))));
        }
        form.act(
                key + ".act",
                hands.may(LotAct.OPEN.act()),
                () -> {
                    Map<String, LotId> with = new LinkedHashMap<>();
                    liquids.forEach((name, field) -> Typed.some(field).ifPresent(id -> with.put(name, new LotId(id))));
                    Instant now = doors.clock().instant();
                    return hands.work(by -> hands.keeping().open(lot.id(), now, with, by));
                },
                hands.said(key));
    }

    private void take(ActForm form, String key, Lot lot, LotHands hands) {
        List<String> names =
                lot.parts().stream().map(balance -> balance.part().name()).toList();
        Field<Combo> part = form.choice("take.part", names);
        part.control().select(0);
        Field<Text> amount = form.text("take.amount", "1");
        Field<Text> reason = form.text("form.reason");
        form.act(
                key + ".act",
                hands.may(LotAct.TAKE.act()),
                () -> {
                    Optional<BigDecimal> much = Typed.amount(amount);
                    Optional<String> why = Typed.words(reason);
                    String name = part.control().getText();
                    return much.isEmpty() || why.isEmpty()
                            ? Optional.<Work<Lot>>empty()
                            : hands.work(by -> hands.keeping().take(lot.id(), name, much.get(), why.get(), by));
                },
                hands.said(key));
    }

    private void place(ActForm form, String key, Lot lot, LotHands hands) {
        Field<Combo> fridge = form.choice("receive.fridge", shown.known().fridges());
        lot.place().ifPresent(fridge.control()::setText);
        form.act(
                key + ".act",
                hands.may(LotAct.PLACE.act()),
                () -> {
                    String id = fridge.control().getText();
                    Instant now = doors.clock().instant();
                    return hands.work(by -> hands.keeping().place(lot.id(), id, now, by));
                },
                hands.said(key));
    }
}
