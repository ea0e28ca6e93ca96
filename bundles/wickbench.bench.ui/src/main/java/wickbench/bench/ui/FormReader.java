package wickbench.bench.ui;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import wickbench.api.lot.LotId;
import wickbench.api.method.Method;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RunControl;
import wickbench.api.reading.Sample;
import wickbench.api.reading.Times;
import wickbench.api.reading.Visual;
import wickbench.api.words.Coded;
import wickbench.bench.run.Clean;
import wickbench.bench.run.RunStrip;

/** Turns what is typed into a reading, or says what is wrong and what is still needed. */
final class FormReader {
    private final Typed typed;
    private final Optional<Method> method;
    private final SiteClock clock;
    private final Map<Item, String> wrong = new EnumMap<>(Item.class);
    private final Map<String, String> wrongChecks = new HashMap<>();

    private FormReader(Typed typed, Optional<Method> method, SiteClock clock) {
        this.typed = typed;
        this.method = method;
        this.clock = clock;
    }

    /** Looks a form through; {@code method} is the one named there, if it is in force. */
    static FormCheck check(Typed typed, Optional<Method> method, SiteClock clock) {
        return new FormReader(typed, method, clock).check();
    }

    private FormCheck check() {
        if (method.isEmpty() && !typed.text(Item.METHOD).isEmpty()) {
            wrong.put(Item.METHOD, BenchUiWords.get("method.unknown"));
        }
        Optional<PersonId> operator = take(Item.OPERATOR, text -> new PersonId(text.toLowerCase(Locale.ROOT)));
        Optional<LotId> lot = take(Item.LOT, LotId::new);
        Optional<PersonId> observer = take(Item.OBSERVER, text -> new PersonId(text.toLowerCase(Locale.ROOT)));
        Times times = times();
        Clean clean = new Clean(
                take(Item.CLEAN, text -> text),
                take(Item.CLEANED_BY, text -> text),
                take(Item.CLEANED_AT, clock::past));
        Optional<Sample> sample = sample();
        Map<String, BigDecimal> preChecks = preChecks();
        List<String> missing = missing();
        boolean whole = wrong.isEmpty() && wrongChecks.isEmpty() && missing.isEmpty();
        return new FormCheck(
                wrong,
                wrongChecks,
                missing,
                whole
                        ? Optional.of(reading(
                                operator.orElseThrow(),
                                observer,
                                lot.orElseThrow(),
                                sample.orElseThrow(),
                                times,
                                preChecks))
                        : Optional.empty(),
                Optional.of(clean).filter(Clean::stated));
    }

    private Reading reading(
            PersonId operator,
            Optional<PersonId> observer,
            LotId lot,
            Sample sample,
            Times times,
            Map<String, BigDecimal> preChecks) {
        Method by = method.orElseThrow();
        return new Reading(
                sample,
                by.ref().id(),
                by.route(),
                lot,
                operator,
                observer,
                times,
                RunStrip.unseen(by),
                Optional.empty(),
                preChecks,
                new Reading.Origin.Bench());
    }

    private Optional<Sample> sample() {
        Optional<BigDecimal> dilution = take(Item.DILUTION, Numbers::dilution);
        Optional<BigDecimal> area = swab() ? take(Item.AREA, Numbers::area) : Optional.empty();
        Optional<Reason> reason = code(Item.REASON, Reason.class);
        Optional<Visual> visual = code(Item.VISUAL, Visual.class);
        Optional<RunControl> control = code(Item.CONTROL, RunControl.class);
        if (typed.text(Item.SAMPLE).isEmpty() || typed.text(Item.PLACE).isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Sample(
                typed.text(Item.SAMPLE),
                typed.text(Item.PLACE),
                take(Item.LINE, text -> text),
                take(Item.BATCH, text -> text),
                reason,
                take(Item.REASON_TEXT, text -> text),
                visual,
                area,
                dilution.orElse(BigDecimal.ONE),
                control));
    }

    private boolean swab() {
        return method.filter(by -> by.route().swab()).isPresent();
    }

    private Times times() {
        Times times = new Times(
                take(Item.OUT_OF_FRIDGE, clock::past),
                take(Item.EXTRACTED, clock::past),
                take(Item.SHAKEN, Numbers::seconds).map(Duration::ofSeconds),
                Optional.empty(),
                Optional.empty());
        return times;
    }

    private Map<String, BigDecimal> preChecks() {
        Map<String, BigDecimal> measured = new HashMap<>();
        typed.preChecks().forEach((name, text) -> {
            try {
                measured.put(name, Numbers.decimal(text));
            } catch (IllegalArgumentException e) {
                wrongChecks.put(name, e.getMessage());
            }
        });
        return measured;
    }

    private List<String> missing() {
        List<String> missing = new ArrayList<>();
        Arrays.stream(Item.values())
                .filter(item -> item.asked() && typed.text(item).isEmpty())
                .forEach(item -> missing.add(item.words()));
        if (typed.text(Item.REASON).equals(Reason.OTHER.code())
                && typed.text(Item.REASON_TEXT).isEmpty()) {
            missing.add(Item.REASON_TEXT.words());
        }
        return missing;
    }

    private <E extends Enum<E> & Coded> Optional<E> code(Item item, Class<E> type) {
        return take(item, text -> Coded.of(type, text));
    }

    private <T> Optional<T> take(Item item, Function<String, T> parse) {
        if (typed.text(item).isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(parse.apply(typed.text(item)));
        } catch (IllegalArgumentException e) {
            wrong.put(item, complaint(item, e));
            return Optional.empty();
        }
    }

    /** Ids complain in the words of files; people at the bench get shorter ones. */
    private static String complaint(Item item, IllegalArgumentException said) {
        return switch (item) {
            case OPERATOR, OBSERVER -> BenchUiWords.get("operator.expected");
            case LOT -> BenchUiWords.get("lot.expected");
            default -> said.getMessage();
        };
    }
}
