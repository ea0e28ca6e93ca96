package wickbench.bench;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickbench.api.method.Method;
import wickbench.api.method.Methods.IssuedMethod;

/** A method on paper: one line of a list, or a page. */
final class MethodPrint {
    private MethodPrint() {}

    static List<String> header() {
        return List.of(
                BenchWords.get("method.id"),
                BenchWords.get("method.title"),
                BenchWords.get("method.format"),
                BenchWords.get("method.route"),
                BenchWords.get("method.limit"),
                BenchWords.get("method.state"),
                BenchWords.get("method.signature"));
    }

    static List<String> row(IssuedMethod issued) {
        Method method = issued.method();
        return List.of(
                method.ref().toString(),
                method.title(),
                method.format().code(),
                method.route().code(),
                limit(method),
                BenchWords.get(issued.until().isEmpty() ? "method.state.in-force" : "method.state.withdrawn"),
                signed(issued.signed()));
    }

    static List<String> page(IssuedMethod issued) {
        Method method = issued.method();
        List<String> lines = new ArrayList<>();
        lines.add(method.ref() + "  " + method.title());
        lines.add(
                BenchWords.get("method.page.kit", method.kit(), method.target().name()));
        lines.add(BenchWords.get(
                "method.page.format", method.format().code(), method.route().code()));
        lines.add(BenchWords.get("method.page.limit", limit(method)));
        lines.add(BenchWords.get(
                "method.page.read",
                seconds(method.timing().develop()),
                seconds(method.timing().window())));
        optional(lines, "method.page.warm-up", method.timing().warmUp());
        optional(lines, "method.page.shake", method.timing().shake());
        optional(lines, "method.page.hold", method.timing().extractHold());
        method.target().notSeen().forEach(part -> lines.add(BenchWords.get("method.page.not-seen", part)));
        for (int i = 0; i < method.steps().size(); i++) {
            lines.add("  " + (i + 1) + ". " + method.steps().get(i).text());
        }
        method.cautions().forEach(caution -> lines.add("  ! " + caution));
        lines.add(BenchWords.get("method.page.from", issued.from(), issued.by(), signed(issued.signed())));
        issued.withdrawal()
                .ifPresent(end -> lines.add(BenchWords.get(
                        "method.page.withdrawn",
                        issued.until().orElseThrow(),
                        end.by(),
                        signed(end.signed()),
                        end.reason())));
        lines.add(BenchWords.get("print.caution"));
        return lines;
    }

    private static String signed(boolean is) {
        return BenchWords.get(is ? "method.signed" : "method.unsigned");
    }

    private static void optional(List<String> lines, String key, Optional<Duration> duration) {
        duration.ifPresent(value -> lines.add(BenchWords.get(key, seconds(value))));
    }

    private static String limit(Method method) {
        return method.limit().value() + " "
                + BenchWords.get("method.holds." + method.limit().holds().code());
    }

    private static String seconds(Duration duration) {
        return duration.toSeconds() + " s";
    }
}
