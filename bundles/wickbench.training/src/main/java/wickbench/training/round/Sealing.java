package wickbench.training.round;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGenerator;
import wickbench.training.PanelStrip;
import wickbench.training.RoundKey;
import wickbench.training.RoundPlan;
import wickbench.training.StripClass;

/** Draws which code hides which strip, and in which order they are read. */
final class Sealing {
    /** Neither vowels, which make words, nor what is taken for another letter. */
    private static final String LETTERS = "BCDFGHJKMNPQRTVWXYZ2346789";

    private static final int LENGTH = 4;
    private static final int NONCE_BYTES = 32;

    private final RandomGenerator chance;

    Sealing(RandomGenerator chance) {
        this.chance = chance;
    }

    /** Returns a key whose order is also the order of reading. */
    RoundKey key(RoundPlan plan) {
        List<PanelStrip> strips = new ArrayList<>(plan.panel().isEmpty() ? unknown(plan) : plan.panel());
        for (int i = strips.size() - 1; i > 0; i--) {
            java.util.Collections.swap(strips, i, chance.nextInt(i + 1));
        }
        Set<String> used = new HashSet<>();
        List<RoundKey.Sealed> sealed = new ArrayList<>();
        for (PanelStrip strip : strips) {
            sealed.add(new RoundKey.Sealed(code(used), strip.item(), strip.kind(), strip.line(), strip.contrast()));
        }
        byte[] nonce = new byte[NONCE_BYTES];
        chance.nextBytes(nonce);
        return new RoundKey(plan.id(), HexFormat.of().formatHex(nonce), sealed);
    }

    /** Strips made for this round only bear its name, so that no other round counts them as the same. */
    private static List<PanelStrip> unknown(RoundPlan plan) {
        List<PanelStrip> strips = new ArrayList<>();
        for (StripClass kind : StripClass.values()) {
            for (int i = 1; i <= plan.design().of(kind); i++) {
                strips.add(new PanelStrip(
                        plan.id() + "/" + kind.code() + "-" + i,
                        kind,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()));
            }
        }
        return strips;
    }

    private String code(Set<String> used) {
        StringBuilder code = new StringBuilder();
        do {
            code.setLength(0);
            for (int i = 0; i < LENGTH; i++) {
                code.append(LETTERS.charAt(chance.nextInt(LETTERS.length())));
            }
        } while (!used.add(code.toString()));
        return code.toString();
    }
}
