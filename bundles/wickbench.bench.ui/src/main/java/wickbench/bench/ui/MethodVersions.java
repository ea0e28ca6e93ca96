package wickbench.bench.ui;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.method.Methods.IssuedMethod;
import wickbench.api.method.Methods.Withdrawal;
import wickbench.bench.ui.MethodDoors.Known;
import wickbench.widgets.Facts;
import wickbench.widgets.Theme;

/** Who issued and withdrew which version when, and whether their name stands under it. */
record MethodVersions(Composite card, Theme theme, Known known) {
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    void fill(List<IssuedMethod> versions) {
        Facts facts = new Facts(card, theme);
        for (IssuedMethod version : versions) {
            facts.add(
                    BenchUiWords.get("card.version", version.method().ref().version()),
                    BenchUiWords.get(
                            version.until().isPresent() ? "card.from-to" : "card.from",
                            time(version.from()),
                            version.until().map(this::time).orElse(""),
                            known.who(version.by()),
                            BenchUiWords.get(version.signed() ? "card.signed" : "card.unsigned")));
            version.withdrawal().ifPresent(end -> facts.add(BenchUiWords.get("card.withdrawn"), words(end)));
        }
    }

    private String words(Withdrawal end) {
        return BenchUiWords.get(
                "card.withdrawn-by",
                known.who(end.by()),
                BenchUiWords.get(end.signed() ? "card.signed-withdrawal" : "card.unsigned"),
                end.reason());
    }

    private String time(Instant instant) {
        return MINUTE.format(instant.atZone(known.zone()));
    }
}
