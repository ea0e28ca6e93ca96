package wickbench.api.reading;

import wickbench.api.words.Coded;

/** Why a sample was taken. */
public enum Reason implements Coded {
    BEFORE_CLEANING(true),
    AFTER_CLEANING(false),
    CHANGEOVER(false),
    START_UP(false),
    FIRST_OFF(false),
    PERIODIC(false),
    COMPLAINT(false),
    ENQUIRY(false),
    CONTROL(false),
    /** A strip by which a delivery of a kit lot is checked before the lot is fit. */
    LOT_CHECK(false),
    RAW_MATERIAL(true),
    REWORK(true),
    /** Any other, in the site's own words; what it may hold is not known. */
    OTHER(true);

    private final boolean grossContaminationPlausible;

    Reason(boolean grossContaminationPlausible) {
        this.grossContaminationPlausible = grossContaminationPlausible;
    }

    /** Tells whether so much allergen may be there that a strip without hook line could miss it. */
    public boolean grossContaminationPlausible() {
        return grossContaminationPlausible;
    }
}
