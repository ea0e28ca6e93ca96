package wickbench.reading;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wickbench.api.json.Fields;
import wickbench.api.method.Method.Basis;
import wickbench.api.method.MethodId;
import wickbench.api.method.MethodRef;
import wickbench.api.method.Unit;
import wickbench.api.reading.Finding;
import wickbench.api.reading.Level;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Owed;
import wickbench.api.reading.Severity;
import wickbench.api.reading.Verdict;
import wickbench.api.words.Coded;

/** Reads a verdict, section by section. */
final class VerdictReader {
    private VerdictReader() {}

    static Optional<Verdict> verdict(Fields fields) {
        Optional<Outcome> outcome = Parts.needCode(fields, "outcome", Outcome.class);
        boolean sign = fields.flag("sign");
        Parts.needList(fields, "findings");
        Parts.needList(fields, "owed");
        List<Finding> findings = fields.children("findings").stream()
                .flatMap(child -> finding(child).stream())
                .toList();
        Optional<Level> level = fields.optionalChild("level").flatMap(VerdictReader::level);
        Set<Owed> owed = owed(fields);
        Optional<MethodRef> method = method(fields.child("method"));
        return outcome.flatMap(said -> method.map(ref -> new Verdict(said, sign, findings, level, owed, ref)));
    }

    private static Optional<Finding> finding(Fields fields) {
        String rule = fields.text("rule");
        Optional<Severity> severity = Parts.needCode(fields, "severity", Severity.class);
        String measured = fields.optionalText("measured").orElse("");
        String asked = fields.optionalText("asked").orElse("");
        return severity.map(known -> new Finding(rule, known, measured, asked));
    }

    private static Optional<Level> level(Fields fields) {
        Optional<BigDecimal> low = Parts.decimal(fields, "low");
        Optional<BigDecimal> high = Parts.decimal(fields, "high");
        Optional<Unit> unit = Parts.needUnit(fields, "unit");
        Optional<Basis> basis = Parts.needCode(fields, "basis", Basis.class);
        Optional<BigDecimal> probability = Parts.decimal(fields, "probability");
        return unit.flatMap(in -> basis.map(as -> new Level(low, high, in, as, probability)));
    }

    private static Set<Owed> owed(Fields fields) {
        Set<Owed> owed = EnumSet.noneOf(Owed.class);
        for (String code : fields.texts("owed")) {
            try {
                owed.add(Coded.of(Owed.class, code));
            } catch (IllegalArgumentException e) {
                fields.complain("owed", e.getMessage());
            }
        }
        return owed;
    }

    private static Optional<MethodRef> method(Fields fields) {
        Optional<MethodId> id = Parts.needParsed(fields, "id", "a method id", MethodId::new);
        int version = Parts.count(fields, "version");
        return id.map(known -> new MethodRef(known, version));
    }
}
