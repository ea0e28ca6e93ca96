package wickbench.ledger.services;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Option;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;

/** What a correction says otherwise, written as in the cells of a run sheet; an empty text means not stated. */
final class ChangedCells {
    @Option(names = "--sample", paramLabel = "LABEL")
    private Optional<String> sample = Optional.empty();

    @Option(names = "--place", paramLabel = "PLACE")
    private Optional<String> place = Optional.empty();

    @Option(names = "--line", paramLabel = "LINE")
    private Optional<String> line = Optional.empty();

    @Option(names = "--batch", paramLabel = "BATCH")
    private Optional<String> batch = Optional.empty();

    @Option(names = "--why", paramLabel = "REASON")
    private Optional<String> why = Optional.empty();

    @Option(names = "--visual", paramLabel = "VISUAL")
    private Optional<String> visual = Optional.empty();

    @Option(names = "--area-cm2", paramLabel = "AREA")
    private Optional<String> area = Optional.empty();

    @Option(names = "--dilution", paramLabel = "TIMES")
    private Optional<String> dilution = Optional.empty();

    @Option(names = "--control", paramLabel = "CONTROL")
    private Optional<String> control = Optional.empty();

    @Option(names = "--lot", paramLabel = "LOT")
    private Optional<String> lot = Optional.empty();

    @Option(names = "--operator", paramLabel = "PERSON")
    private Optional<String> operator = Optional.empty();

    @Option(names = "--out-of-fridge", paramLabel = "TIME")
    private Optional<String> outOfFridge = Optional.empty();

    @Option(names = "--extracted", paramLabel = "TIME")
    private Optional<String> extracted = Optional.empty();

    @Option(names = "--shaken-s", paramLabel = "SECONDS")
    private Optional<String> shaken = Optional.empty();

    @Option(names = "--started", paramLabel = "TIME")
    private Optional<String> started = Optional.empty();

    @Option(names = "--read", paramLabel = "TIME")
    private Optional<String> read = Optional.empty();

    @Option(names = "--seen", paramLabel = "LINES")
    private Optional<String> seen = Optional.empty();

    /** Does something with the cells; what is wrong with one is told of the option that filled it. */
    static <T> T named(Supplier<T> act) {
        try {
            return act.get();
        } catch (BadInput cells) {
            throw new BadInput(
                    cells.complaints().stream().map(ChangedCells::byOption).toList());
        }
    }

    private static Complaint byOption(Complaint cell) {
        String option = cell.field().equals("reason") ? "why" : cell.field().replace('_', '-');
        return Complaint.of(option.isEmpty() ? cell.source() : "--" + option, cell.text());
    }

    /** Returns what was given, by the column of a run sheet. */
    Map<String, String> given() {
        Map<String, String> cells = new LinkedHashMap<>();
        sample.ifPresent(text -> cells.put("sample", text));
        place.ifPresent(text -> cells.put("place", text));
        line.ifPresent(text -> cells.put("line", text));
        batch.ifPresent(text -> cells.put("batch", text));
        why.ifPresent(text -> cells.put("reason", text));
        visual.ifPresent(text -> cells.put("visual", text));
        area.ifPresent(text -> cells.put("area_cm2", text));
        dilution.ifPresent(text -> cells.put("dilution", text));
        control.ifPresent(text -> cells.put("control", text));
        lot.ifPresent(text -> cells.put("lot", text));
        operator.ifPresent(text -> cells.put("operator", text));
        outOfFridge.ifPresent(text -> cells.put("out_of_fridge", text));
        extracted.ifPresent(text -> cells.put("extracted", text));
        shaken.ifPresent(text -> cells.put("shaken_s", text));
        started.ifPresent(text -> cells.put("started", text));
        read.ifPresent(text -> cells.put("read", text));
        seen.ifPresent(text -> cells.put("seen", text));
        return cells;
    }
}
