package wickbench.bench;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import wickbench.api.lot.LotId;
import wickbench.api.method.Method;
import wickbench.api.method.MethodId;
import wickbench.api.method.Route;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Reason;
import wickbench.api.reading.Sample;
import wickbench.api.reading.Strip;
import wickbench.api.reading.Times;
import wickbench.api.words.Coded;
import wickbench.api.words.Decimals;

/** Turns one row of a sheet into a reading. */
final class SheetRow {
    private static final int MILLIS = 3;

    private final SheetCells cells;
    private final MethodSource methods;

    SheetRow(SheetCells cells, MethodSource methods) {
        this.cells = cells;
        this.methods = methods;
    }

    /** Returns the reading; empty when the row was complained of. */
    Optional<Reading> reading() {
        Times times = times();
        Optional<Sample> sample = sample();
        Optional<Route> route = cells.asked("route", text -> Coded.of(Route.class, SheetChoices.code(text)));
        Optional<LotId> lot = cells.asked("lot", LotId::new);
        Optional<PersonId> operator = cells.asked("operator", text -> new PersonId(SheetChoices.code(text)));
        Optional<Method> method = method(times.started());
        method.ifPresent(found -> route.ifPresent(stated -> compare(found, stated)));
        Optional<Strip> strip = method.flatMap(this::strip);
        if (sample.isEmpty() || route.isEmpty() || lot.isEmpty() || operator.isEmpty() || strip.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Reading(
                sample.get(),
                method.get().ref().id(),
                route.get(),
                lot.get(),
                operator.get(),
                Optional.empty(),
                times,
                strip.get(),
                Optional.empty(),
                preChecks(method.get()),
                new Reading.Origin.Sheet(cells.source(), cells.line())));
    }

    private Optional<Method> method(Optional<Instant> started) {
        return cells.asked("method", text -> {
            MethodId id = new MethodId(SheetChoices.code(text));
            return methods.find(id, started)
                    .orElseThrow(() -> new IllegalArgumentException(BenchWords.get("method.unknown", id)));
        });
    }

    private void compare(Method method, Route route) {
        if (method.route() != route) {
            cells.complain(
                    "route",
                    BenchWords.get(
                            "route.other", method.ref().id(), method.route().code(), route.code()));
        }
    }

    private Optional<Strip> strip(Method method) {
        try {
            return Optional.of(
                    SeenLines.parse(method.format(), cells.text("seen").orElse("")));
        } catch (IllegalArgumentException e) {
            cells.complain("seen", e.getMessage());
            return Optional.empty();
        }
    }

    private Optional<Sample> sample() {
        Optional<String> code = cells.asked("sample", text -> text);
        Optional<String> place = cells.asked("place", text -> text);
        Optional<String> words = cells.text("reason");
        Optional<Reason> reason = words.map(SheetChoices::reason);
        Optional<BigDecimal> area = cells.decimal("area_cm2").filter(this::positiveArea);
        BigDecimal dilution = cells.optional("dilution", text -> Dilution.parse(text, cells::decimalOf))
                .orElse(BigDecimal.ONE);
        return code.flatMap(label -> place.map(where -> new Sample(
                label,
                where,
                cells.text("line"),
                cells.text("batch"),
                reason,
                words.filter(text -> reason.get() == Reason.OTHER),
                cells.optional("visual", SheetChoices::visual),
                area,
                dilution,
                cells.optional("control", SheetChoices::control))));
    }

    private boolean positiveArea(BigDecimal area) {
        if (area.signum() <= 0) {
            cells.complain("area_cm2", BenchWords.get("area.not-positive", Decimals.of(area)));
        }
        return area.signum() > 0;
    }

    private Times times() {
        Times times = new Times(
                cells.time("out_of_fridge"),
                cells.time("extracted"),
                cells.decimal("shaken_s").flatMap(this::duration),
                cells.time("started"),
                cells.time("read"));
        times.started().ifPresent(started -> {
            notAfter("out_of_fridge", times.outOfFridge(), started);
            notAfter("extracted", times.extracted(), started);
            if (times.read().filter(read -> read.isBefore(started)).isPresent()) {
                cells.complain(
                        "read",
                        BenchWords.get(
                                "time.read-before-start", cells.text("started").orElse("")));
            }
        });
        return times;
    }

    private Optional<Duration> duration(BigDecimal seconds) {
        try {
            return Optional.of(Duration.ofMillis(seconds.movePointRight(MILLIS).longValueExact()))
                    .filter(shaken -> !shaken.isNegative())
                    .or(() -> unreadable(seconds));
        } catch (ArithmeticException e) {
            return unreadable(seconds);
        }
    }

    private Optional<Duration> unreadable(BigDecimal seconds) {
        cells.complain("shaken_s", BenchWords.get("cell.not-seconds", Decimals.of(seconds)));
        return Optional.empty();
    }

    private void notAfter(String column, Optional<Instant> earlier, Instant started) {
        if (earlier.filter(time -> time.isAfter(started)).isPresent()) {
            cells.complain(
                    column,
                    BenchWords.get("time.after-start", cells.text("started").orElse("")));
        }
    }

    private Map<String, BigDecimal> preChecks(Method method) {
        Map<String, BigDecimal> measured = new LinkedHashMap<>();
        for (String column : cells.preChecks()) {
            String name = column.substring(SheetColumns.PRE_CHECK.length());
            cells.decimal(column)
                    .ifPresent(value -> method.preChecks().stream()
                            .filter(check -> check.name().equalsIgnoreCase(name))
                            .findFirst()
                            .ifPresentOrElse(
                                    check -> measured.put(check.name(), value),
                                    () -> cells.complain(
                                            column,
                                            BenchWords.get(
                                                    "check.unknown",
                                                    method.ref().id()))));
        }
        return measured;
    }
}
