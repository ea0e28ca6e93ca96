package wickbench.training;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import wickbench.api.journal.Hash;
import wickbench.api.json.Json;

/**
 * The key of a round: which code hides which strip.
 *
 * <p>The journal holds the SHA-256 of its canonical form (RFC 8785) from before the first call on, and the key itself once the
 * round is closed; so everybody can check that it was not changed in between.
 *
 * @param nonce 256 bits of chance in hexadecimal, without which the hash could be guessed
 */
public record RoundKey(String round, String nonce, List<Sealed> strips) {
    public RoundKey {
        strips = List.copyOf(strips);
    }

    /**
     * A code and what it hides.
     *
     * @param contrast of its test line in percent, where that was measured
     */
    public record Sealed(
            String code, String item, StripClass kind, Optional<Boolean> line, Optional<BigDecimal> contrast) {}

    /** Returns the hash that the journal holds of it. */
    public Hash commitment() {
        return Hash.ofContent(json().canonical());
    }

    public Optional<Sealed> of(String code) {
        return strips.stream().filter(strip -> strip.code().equals(code)).findFirst();
    }

    public Json.Obj json() {
        return Json.object()
                .with("round", round)
                .with("nonce", nonce)
                .with("strips", Json.array(strips.stream().map(RoundKey::json).toList()));
    }

    private static Json.Obj json(Sealed strip) {
        return Json.object()
                .with("code", strip.code())
                .with("item", strip.item())
                .with("class", strip.kind().code())
                .withOptional("line", strip.line().map(Json.Bool::new))
                .withOptional("contrast", strip.contrast().map(Json.Num::new));
    }
}
