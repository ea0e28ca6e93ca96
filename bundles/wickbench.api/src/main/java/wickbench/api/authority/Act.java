package wickbench.api.authority;

import java.util.Set;
import wickbench.api.person.Role;
import wickbench.api.words.Coded;

/**
 * What asks for a role; its code is also the meaning of a signature under it.
 *
 * <p>Recording what has happened is no such act: a fact is never refused.
 */
public enum Act implements Coded {
    ENROL_PERSON(false, Role.ADMINISTRATOR),
    ASSIGN_ROLES(false, Role.ADMINISTRATOR),
    SET_BENCH_KEY(false, Role.ADMINISTRATOR),
    RESET_PASSPHRASE(true, Role.ADMINISTRATOR),
    WITNESS(true),
    FORGET_PERSON(true, Role.ADMINISTRATOR),
    SEAL_RECOVERY(true, Role.ADMINISTRATOR),
    ISSUE_PROFILE(true, Role.ADMINISTRATOR),
    /** Add or remove a set of pages, commands and gates while the program runs. */
    CHANGE_PARTS(true, Role.ADMINISTRATOR),
    ISSUE_METHOD(false, Role.REVIEWER, Role.ADMINISTRATOR),
    WITHDRAW_METHOD(false, Role.REVIEWER, Role.ADMINISTRATOR),
    /** Say for which food, surface and cleaner a method was shown to work. */
    VERIFY_METHOD(true, Role.REVIEWER),
    CORRECT_READING(false, Role.REVIEWER),
    CORRECT_OWN_READING(true),
    /** Release a hold, or end anything else that is owed, by decision. */
    SETTLE_OWED(true, Role.REVIEWER, Role.RELEASER),
    /** Receive, count, quarantine and destroy lots; define kits; keep fridges and equipment. */
    KEEP_STOCK(false, Role.STOCK_KEEPER),
    /** Open a pouch, or take parts out of stock. */
    USE_STOCK(false),
    CHECK_LOT(false, Role.STOCK_KEEPER, Role.REVIEWER),
    /** Release, shorten or give up lots after an excursion or a quarantine. */
    DECIDE_STORAGE(true, Role.REVIEWER, Role.RELEASER),
    /** Say by when and for what people may test: authorise, renew, restore. */
    AUTHORISE_OPERATOR(true, Role.TRAINER),
    SUSPEND_OPERATOR(true, Role.TRAINER, Role.REVIEWER),
    /** Keep terms, rounds, observed tests, questions, light and sight. */
    KEEP_TRAINING(false, Role.TRAINER),
    /** Say what a round of blind strips came to. */
    SCORE_ROUND(true, Role.TRAINER),
    /** Say of oneself that a method is read and understood, or that one has seen what was found of oneself. */
    ACKNOWLEDGE(true),
    /** Call strips of a blind round, answer questions, or keep a drill of one's own. */
    CALL_STRIPS(false),
    /** Look over what others have read, and stand behind it. */
    REVIEW_READING(true, Role.REVIEWER),
    /** Order a clean, a test or a hold because of a result, and what becomes of its product, short of releasing it. */
    DECIDE_ACTION(true, Role.REVIEWER, Role.RELEASER),
    /** Say which points must be Negative before a line or what it made may go. */
    PLAN_RELEASE(true, Role.REVIEWER),
    /** Say over which period the limits of a trend are reckoned. */
    BASE_TREND(true, Role.REVIEWER),
    /** Let held product, a batch or a line go. */
    RELEASE(true, Role.RELEASER),
    /** State lines, points, products, cleans, rules and the floor picture; open a series that shows that a clean works. */
    KEEP_PLANT(false, Role.REVIEWER),
    /** Stand behind a clean that was shown to work. */
    VALIDATE_CLEAN(true, Role.REVIEWER),
    /** Answer for a test of the programme that was missed. */
    EXCUSE_DUE(true, Role.REVIEWER),
    /** Say by which of several decisions a subject stands that stations made without knowing of one another. */
    SETTLE_CLASH(true, Role.REVIEWER, Role.RELEASER, Role.ADMINISTRATOR);

    private final boolean signed;
    private final Set<Role> roles;

    Act(boolean signed, Role... roles) {
        this.signed = signed;
        this.roles = Set.of(roles);
    }

    /** Returns the roles of which one is enough; empty when everyone enrolled may. */
    public Set<Role> roles() {
        return roles;
    }

    /** Tells whether it is signed wherever people have passphrases, whatever the site profile says. */
    public boolean signed() {
        return signed;
    }
}
