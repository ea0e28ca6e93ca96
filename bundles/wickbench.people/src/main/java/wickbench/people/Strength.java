package wickbench.people;

import java.util.List;
import wickbench.api.authority.Passphrase;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;

/** What a new secret must be: long rather than strange (NIST SP 800-63B §5.1.1: length, no rules of composition). */
final class Strength {
    /** NIST asks for at least 8, ASVS 5.0 V6.2.1 advises 15; four common words have more than 12. */
    static final int SHORTEST = 12;

    static final int LONGEST = 256;
    static final int VARIETY = 5;
    static final int SHORTEST_PIN = 4;
    static final int LONGEST_PIN = 12;

    private Strength() {}

    /** Refuses what is short, uniform, or says whose it is. */
    static void refuseWeak(Passphrase fresh, List<String> whose) {
        if (fresh.length() < SHORTEST || fresh.length() > LONGEST) {
            throw bad("passphrase.length", SHORTEST, LONGEST);
        }
        if (fresh.variety() < VARIETY) {
            throw bad("passphrase.variety", VARIETY);
        }
        whose.stream().filter(fresh::contains).findFirst().ifPresent(word -> {
            throw bad("passphrase.own");
        });
    }

    static void refuseWeakPin(Passphrase pin) {
        String digits = new String(pin.bytes(), java.nio.charset.StandardCharsets.UTF_8);
        if (!digits.matches("[0-9]{" + SHORTEST_PIN + "," + LONGEST_PIN + "}")) {
            throw bad("pin.form", SHORTEST_PIN, LONGEST_PIN);
        }
    }

    private static BadInput bad(String key, Object... values) {
        return new BadInput(Complaint.of(key.substring(0, key.indexOf('.')), PeopleWords.get(key, values)));
    }
}
