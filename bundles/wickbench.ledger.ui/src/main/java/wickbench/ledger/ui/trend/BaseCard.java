package wickbench.ledger.ui.trend;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import wickbench.api.authority.Permission.Denied;
import wickbench.ledger.trend.TrendBase;
import wickbench.ledger.trend.Trending.Trend;
import wickbench.ledger.ui.trend.TrendDoors.Rights;
import wickbench.shell.PageContext;
import wickbench.shell.SignSheet;
import wickbench.shell.SignSheet.Asked;
import wickbench.widgets.Field;
import wickbench.widgets.Form;
import wickbench.widgets.Type;

/** Over which period the limits are frozen, and how they are frozen anew: by a signed entry only. */
final class BaseCard {
    private final PageContext context;
    private final TrendDoors doors;
    private final Rights rights;
    private final Shell window;
    private final Runnable again;

    BaseCard(PageContext context, TrendDoors doors, Rights rights, Shell window, Runnable again) {
        this.context = context;
        this.doors = doors;
        this.rights = rights;
        this.window = window;
        this.again = again;
    }

    void into(Composite card, Trend trend) {
        context.theme().controls().label(card, Type.STRONG, TrendWords.get("base.title"));
        context.theme()
                .controls()
                .text(
                        card,
                        Type.BODY,
                        trend.base()
                                .map(base -> TrendWords.get("base.frozen", base.from(), base.to(), base.reason()))
                                .orElseGet(() -> TrendWords.get("base.none"))
                                .replace("&", "&&"));
        Form form = new Form(card, context.theme());
        Field<Text> from = form.text(TrendWords.get("base.from"));
        Field<Text> to = form.text(TrendWords.get("base.to"));
        from.control().setMessage(TrendWords.get("base.day"));
        to.control().setMessage(TrendWords.get("base.day"));
        Button freeze =
                context.theme().controls().button(card, TrendWords.get("base.freeze"), () -> freeze(trend, from, to));
        if (rights.base() instanceof Denied denied) {
            freeze.setEnabled(false);
            context.theme().controls().text(card, Type.SMALL, denied.text());
        }
    }

    private void freeze(Trend trend, Field<Text> from, Field<Text> to) {
        Optional<LocalDate> first = day(from);
        Optional<LocalDate> last = day(to);
        if (first.isEmpty() || last.isEmpty()) {
            return;
        }
        if (last.get().isBefore(first.get())) {
            to.complain(TrendWords.get("bar.before", last.get(), first.get()));
            return;
        }
        sign(trend, first.get(), last.get());
    }

    private static Optional<LocalDate> day(Field<Text> field) {
        field.clear();
        try {
            return Optional.of(LocalDate.parse(field.control().getText().strip()));
        } catch (DateTimeException e) {
            field.complain(TrendWords.get("bar.day", field.control().getText().strip()));
            return Optional.empty();
        }
    }

    private void sign(Trend trend, LocalDate from, LocalDate to) {
        var filter = trend.asked().filter();
        SignSheet.open(
                context,
                window,
                new Asked(
                        TrendWords.get("base.asked", from, to),
                        rights.name(),
                        TrendWords.get("base.meaning"),
                        TrendWords.get("base.verb"),
                        Optional.of(TrendWords.get("base.reason")),
                        rights.keyed()),
                (passphrase, reason) -> doors.trending()
                        .base(
                                new TrendBase(
                                        filter.line(),
                                        filter.place(),
                                        filter.method(),
                                        filter.target(),
                                        from,
                                        to,
                                        reason),
                                rights.actor().orElseThrow(),
                                passphrase),
                entry -> {
                    context.say(TrendWords.get("base.done", from, to, entry));
                    again.run();
                });
    }
}
