package wickbench.people.profile;

import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;
import wickbench.api.profile.ControlRule;
import wickbench.api.profile.Profile;

/** Profiles for tests. */
public final class Profiled {
    static final String TEXT = """
            {"plant": "Feldmark Mill", "zone": "Europe/Vienna", "units": ["mg/kg", "µg/100 cm²"],
             "required_checks": ["stock"], "required_signatures": ["method.issued"], "double_read": 0.1,
             "review_days": 7, "outcome_order": ["positive-above-range", "positive", "invalid", "negative"],
             "waived_lot_checks": ["Feldmark hazelnut kit, three lines"], "retention_years": 3}""";

    private Profiled() {}

    static Json.Obj object() {
        return JsonReader.readObject("profile", TEXT).orRefuse();
    }

    public static Profile plain() {
        return ProfileJson.read("profile", TEXT).orRefuse();
    }

    /** Returns a profile by which passphrases hold for so many days. */
    public static Profile aging(int days) {
        return ProfileJson.read(
                        "profile",
                        object().with("required_signatures", Json.texts(java.util.List.of()))
                                .with("passphrase_days", days))
                .orRefuse();
    }

    /** Returns a profile that asks for nothing but keeps records for so many years. */
    public static Profile keeping(int years) {
        Profile plain = plain();
        return new Profile(
                plain.plant(),
                plain.zone(),
                plain.units(),
                java.util.Set.of(),
                java.util.Set.of(),
                plain.doubleRead(),
                plain.reviewDays(),
                plain.outcomeOrder(),
                years,
                java.util.Optional.empty(),
                ControlRule.NONE,
                java.util.Set.of());
    }
}
