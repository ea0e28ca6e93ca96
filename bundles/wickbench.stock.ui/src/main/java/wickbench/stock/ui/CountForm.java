package wickbench.stock.ui;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.widgets.Text;
import wickbench.shell.ActForm;
import wickbench.stock.Balance;
import wickbench.stock.Count;
import wickbench.stock.Lot;
import wickbench.widgets.Field;
import wickbench.widgets.Meaning;
import wickbench.widgets.Typed;
import wickbench.widgets.Work;

/** Asks what lies on the shelf, beside what should be there. */
final class CountForm {
    private CountForm() {}

    static void fill(ActForm form, String key, Lot lot, LotHands hands) {
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
                hands.may(LotAct.COUNT.act()),
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
                            lot.id(),
                            hands.doors().clock().instant(),
                            sealed.get(),
                            open.get(),
                            amounts,
                            Typed.some(reason));
                    return hands.work(by -> hands.keeping().count(count, by));
                },
                hands.said(key));
    }
}
