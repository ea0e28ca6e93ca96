package wickbench.reading.plan;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import wickbench.api.check.Checked;
import wickbench.api.check.Complaint;

/**
 * What is to be planned; {@link #of} checks it.
 *
 * @param running strips that were started already
 * @param toStart strips that wait for their start
 * @param rule what must lie inside the window
 * @param freeFrom when the operator's hands are free, counted from the moment of the plan
 */
public record PlanRequest(List<StartedStrip> running, List<PlanStrip> toStart, WindowRule rule, Duration freeFrom) {
    /** The most strips that are planned together. */
    public static final int MOST = 1000;

    public PlanRequest {
        running = List.copyOf(running);
        toStart = List.copyOf(toStart);
        freeFrom = Millis.whole(freeFrom);
    }

    /** Asks for a run of which nothing has begun. */
    public static Checked<PlanRequest> of(String source, List<PlanStrip> strips, WindowRule rule) {
        return of(source, new PlanRequest(List.of(), strips, rule, Duration.ZERO));
    }

    /**
     * Returns the request, if it can be planned.
     *
     * @param source where it comes from, for the complaints
     */
    public static Checked<PlanRequest> of(String source, PlanRequest request) {
        List<Complaint> complaints = new ArrayList<>(PlanRules.complaints(source, request));
        return complaints.isEmpty() ? Checked.good(request) : Checked.bad(complaints);
    }

    /** Returns all strips, the running ones first. */
    public List<PlanStrip> strips() {
        return Stream.concat(running.stream().map(StartedStrip::strip), toStart.stream())
                .toList();
    }
}
