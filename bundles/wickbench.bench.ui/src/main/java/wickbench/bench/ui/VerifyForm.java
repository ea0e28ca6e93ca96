package wickbench.bench.ui;

import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import wickbench.api.journal.EntryRef;
import wickbench.api.method.Method;
import wickbench.bench.evidence.Verification;
import wickbench.bench.ui.MethodDoors.Known;
import wickbench.figures.sums.KeptSums.Kept;
import wickbench.figures.sums.Sum;
import wickbench.figures.sums.Sums;
import wickbench.shell.PageContext;
import wickbench.widgets.Field;
import wickbench.widgets.Fit;
import wickbench.widgets.Form;
import wickbench.widgets.Type;

/** Asks for which food, surface and cleaner a method was shown to work, and by which kept sums. */
final class VerifyForm {
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    private final Method method;
    private final Field<Text> food;
    private final Field<Text> surface;
    private final Field<Text> cleaner;
    private final Field<Text> remark;
    private final Map<EntryRef, Button> evidence = new LinkedHashMap<>();

    VerifyForm(
            Composite parent,
            PageContext context,
            Known known,
            Method method,
            List<Kept> kept,
            Consumer<Verification> done,
            Runnable leave) {
        this.method = method;
        var controls = context.theme().controls();
        controls.text(
                parent,
                Type.HEADING,
                BenchUiWords.get("verify.title", method.title(), method.ref().version()));
        controls.text(parent, Type.BODY, BenchUiWords.get("verify.line"));
        Composite card = Fit.wide(controls.card(parent, 1));
        Form form = new Form(card, context.theme());
        food = form.text(BenchUiWords.get("verify.food"));
        surface = form.text(BenchUiWords.get("verify.surface"));
        cleaner = form.text(BenchUiWords.get("verify.cleaner"));
        remark = form.text(BenchUiWords.get("verify.remark"));
        Composite list = Fit.wide(controls.card(parent, 1));
        controls.label(list, Type.STRONG, BenchUiWords.get("verify.evidence"));
        if (kept.isEmpty()) {
            controls.text(list, Type.BODY, BenchUiWords.get("verify.no-evidence"));
        }
        kept.forEach(each -> evidence.put(each.entry(), controls.check(list, words(each, known))));
        Composite row = controls.row(parent);
        controls.mainButton(row, BenchUiWords.get("verify.verb"), () -> take(done));
        controls.button(row, BenchUiWords.get("draft.leave"), leave);
        food.control().setFocus();
    }

    private static String words(Kept kept, Known known) {
        String title =
                Sums.find(kept.what().sum()).map(Sum::title).orElse(kept.what().sum());
        String about = kept.what().about().map(text -> ": " + text).orElse("");
        return BenchUiWords.get(
                        "verify.kept",
                        title + about,
                        MINUTE.format(kept.at().atZone(known.zone())),
                        known.who(kept.by()))
                .replace("&", "&&");
    }

    /** Says at once, below the field, what the door would refuse. */
    private void take(Consumer<Verification> done) {
        Verification what = new Verification(
                method.ref(),
                said(food),
                said(surface),
                said(cleaner),
                evidence.entrySet().stream()
                        .filter(each -> each.getValue().getSelection())
                        .map(Map.Entry::getKey)
                        .toList(),
                said(remark));
        food.clear();
        remark.clear();
        if (what.what().isEmpty()) {
            food.complain(BenchUiWords.get("verify.for-nothing"));
        } else if (what.evidence().isEmpty() && what.remark().isEmpty()) {
            remark.complain(BenchUiWords.get("verify.by-nothing"));
        } else {
            done.accept(what);
        }
    }

    private static Optional<String> said(Field<Text> field) {
        return Optional.of(field.control().getText().strip()).filter(text -> !text.isEmpty());
    }
}
