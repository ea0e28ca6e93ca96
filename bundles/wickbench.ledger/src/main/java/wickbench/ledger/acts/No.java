package wickbench.ledger.acts;

import java.util.List;
import java.util.stream.Collectors;
import wickbench.api.check.Refusal;

/**
 * Why not: one rule that speaks against an act.
 *
 * @param code which rule, for example {@code release.point-missing}
 * @param text the reason in one line, with its facts
 */
public record No(String code, String text) {

    /** Ends the act with a refusal that tells each reason on a line of its own, unless there is none. */
    public static void refuse(List<No> reasons) {
        if (!reasons.isEmpty()) {
            throw new Refusal(
                    reasons.get(0).code(), reasons.stream().map(No::text).collect(Collectors.joining("\n")));
        }
    }
}
