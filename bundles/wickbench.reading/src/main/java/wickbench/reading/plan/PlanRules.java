package wickbench.reading.plan;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import wickbench.api.check.Complaint;

/** What may be wrong with a request. */
final class PlanRules {
    private static final Duration LONGEST = Duration.ofDays(1);

    private final String source;
    private final PlanRequest request;
    private final List<Complaint> complaints = new ArrayList<>();

    private PlanRules(String source, PlanRequest request) {
        this.source = source;
        this.request = request;
    }

    static List<Complaint> complaints(String source, PlanRequest request) {
        PlanRules rules = new PlanRules(source, request);
        rules.count();
        rules.names();
        request.strips().forEach(rules::durations);
        request.running().forEach(rules::started);
        rules.freeFrom();
        return rules.complaints;
    }

    private void count() {
        int count = request.strips().size();
        if (count > PlanRequest.MOST) {
            complain("strips", "expected at most " + PlanRequest.MOST + ", found " + count);
        }
    }

    private void names() {
        Set<String> names = new HashSet<>();
        for (PlanStrip strip : request.strips()) {
            if (strip.name().isBlank()) {
                complain("strip", "has no number");
            } else if (!names.add(strip.name())) {
                complain("strip " + strip.name(), "two strips have this number");
            }
        }
    }

    private void durations(PlanStrip strip) {
        String field = "strip " + strip.name();
        lasts(field + " hands-on", strip.handsOn());
        lasts(field + " develop", strip.develop());
        lasts(field + " look", strip.look());
        if (strip.window().isNegative() || strip.window().compareTo(LONGEST) > 0) {
            complain(field + " window", "expected 0 s to one day, found " + Millis.text(strip.window()));
        } else if (request.rule().slack(strip).isNegative()) {
            complain(
                    field + " window",
                    "a window of " + Millis.text(strip.window()) + " is shorter than the look of "
                            + Millis.text(strip.look()));
        }
    }

    private void lasts(String field, Duration span) {
        if (span.compareTo(Duration.ZERO) <= 0 || span.compareTo(LONGEST) > 0) {
            complain(field, "expected above 0 s and at most one day, found " + Millis.text(span));
        }
    }

    private void started(StartedStrip strip) {
        if (strip.startedAt().abs().compareTo(LONGEST) > 0) {
            complain(
                    "strip " + strip.strip().name() + " started",
                    "expected within one day of now, found " + Millis.text(strip.startedAt()));
        }
    }

    private void freeFrom() {
        if (request.freeFrom().isNegative() || request.freeFrom().compareTo(LONGEST) > 0) {
            complain("free from", "expected 0 s to one day, found " + Millis.text(request.freeFrom()));
        }
    }

    private void complain(String field, String text) {
        complaints.add(Complaint.of(source, field, text));
    }
}
