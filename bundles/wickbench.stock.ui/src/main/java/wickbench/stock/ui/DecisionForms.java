package wickbench.stock.ui;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Text;
import wickbench.api.authority.Act;
import wickbench.api.authority.Actor;
import wickbench.api.journal.EntryRef;
import wickbench.shell.ActForm;
import wickbench.stock.Clash;
import wickbench.stock.Happening;
import wickbench.stock.Lot;
import wickbench.stock.StockTerms;
import wickbench.widgets.Field;
import wickbench.widgets.Typed;

/** What is decided on a lot under a signature. */
final class DecisionForms {
    private DecisionForms() {}

    /** What is done with a reason by somebody who signs. */
    interface Deed {
        Lot by(String reason, Actor actor);
    }

    static void reasoned(ActForm form, LotAct act, Lot lot, LotHands hands, Deed deed) {
        String key = "act." + act.code();
        Field<Text> reason = form.text("form.reason");
        form.button(
                key + ".act",
                hands.may(act.act()),
                () -> Typed.words(reason).ifPresent(why -> hands.sign(key, lot.id(), by -> deed.by(why, by))));
    }

    /** A lot may have been good for a while: only what was read with it since then is in doubt. */
    static void reject(ActForm form, String key, Lot lot, ZoneId zone, LotHands hands) {
        Field<Text> since = form.text("reject.since");
        since.hint(StockUiWords.get("reject.since.hint"));
        Field<Text> reason = form.text("form.reason");
        form.button(key + ".act", hands.may(LotAct.REJECT.act()), () -> {
            boolean said = Typed.some(since).isPresent();
            Optional<Instant> from = said ? Typed.time(since, zone) : Optional.empty();
            Optional<String> why = Typed.words(reason);
            if (why.isPresent() && (!said || from.isPresent())) {
                hands.sign(key, lot.id(), by -> hands.keeping().reject(lot.id(), from, why.get(), by));
            }
        });
    }

    static void release(ActForm form, String key, Lot lot, LotHands hands) {
        Field<Text> until = form.text("release.until");
        until.hint(StockUiWords.get("release.until.hint", lot.effective()));
        Field<Text> reason = form.text("form.reason");
        form.button(key + ".act", hands.may(LotAct.RELEASE.act()), () -> {
            Optional<LocalDate> day = Typed.some(until).isEmpty() ? Optional.empty() : Typed.date(until);
            boolean wrong = Typed.some(until).isPresent() && day.isEmpty();
            Optional<String> why = Typed.words(reason);
            if (!wrong && why.isPresent()) {
                hands.sign(key, lot.id(), by -> hands.keeping().release(lot.id(), day, why.get(), by));
            }
        });
    }

    /** Lets a lot stand by one of the decisions that stations made without knowing of one another. */
    static void settle(ActForm form, LotDesk.Shown shown, LotHands hands) {
        Lot lot = shown.lot();
        List<EntryRef> decisions = shown.clashing();
        Field<Combo> stands = form.choice(
                "settle.stands",
                decisions.stream().map(ref -> words(ref, shown)).toList());
        Field<Text> reason = form.text("form.reason");
        form.button("act.settle.act", hands.may(Act.SETTLE_CLASH), () -> {
            int chosen = stands.control().getSelectionIndex();
            Optional<String> why = Typed.words(reason);
            if (chosen < 0) {
                stands.complain(StockUiWords.get("settle.choose"));
            } else if (why.isPresent()) {
                stands.clear();
                hands.sign("act.settle", lot.id(), by -> settled(lot, decisions.get(chosen), why.get(), by, hands));
            }
        });
    }

    private static Lot settled(Lot lot, EntryRef stands, String why, Actor by, LotHands hands) {
        hands.doors().settling().settle(Clash.subject(lot.id()), stands, why, by.who(), by.passphrase());
        return lot;
    }

    /** What was decided, by whom and when; an entry that has not come yet is named alone. */
    private static String words(EntryRef ref, LotDesk.Shown shown) {
        return shown.history().stream()
                .filter(each -> each.entry().ref().equals(ref))
                .findFirst()
                .map(each -> words(each, shown.known()))
                .orElseGet(ref::toString);
    }

    private static String words(Happening each, LotDesk.Known known) {
        return StockUiWords.get(
                "settle.choice",
                StockTerms.act(each.entry().kind()),
                known.rights().who(each.entry().by()),
                known.times().minute(each.at()),
                each.entry().ref());
    }
}
