package wickbench.plant.allergen;

import wickbench.api.words.Coded;

/** A published list of allergens that labels must declare, with its source and the date from which it stands as kept here. */
public enum AllergenList implements Coded {
    CODEX(
            "Codex Alimentarius, General Standard for the Labelling of Prepackaged Foods, CXS 1-1985, revision of 2024",
            "2024-11"),
    /** Where a national authority asks for them. */
    CODEX_OPTIONAL(
            "Codex Alimentarius, CXS 1-1985, revision of 2024: declared where an authority asks for it", "2024-11"),
    EU("Regulation (EU) No 1169/2011, Annex II", "2011-10-25"),
    US("Federal Food, Drug, and Cosmetic Act 201(qq): FALCPA 2004 with the FASTER Act of 2021", "2023-01-01");

    private final String source;
    private final String date;

    AllergenList(String source, String date) {
        this.source = source;
        this.date = date;
    }

    public String source() {
        return source;
    }

    /** Returns the day or month from which this edition stands, as ISO 8601 writes it. */
    public String date() {
        return date;
    }
}
