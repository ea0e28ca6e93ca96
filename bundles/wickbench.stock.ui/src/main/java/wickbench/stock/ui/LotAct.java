package wickbench.stock.ui;

import java.time.LocalDate;
import java.util.Optional;
import wickbench.api.authority.Act;
import wickbench.api.words.Coded;
import wickbench.stock.Lot;
import wickbench.stock.LotMove;
import wickbench.stock.LotState;

/** What can be done with a lot, in the order in which it is offered. */
enum LotAct implements Coded {
    SETTLE(Act.SETTLE_CLASH, Optional.empty()),
    CHECK(Act.CHECK_LOT, Optional.of(LotMove.PASS)),
    WAIVE(Act.CHECK_LOT, Optional.of(LotMove.WAIVE)),
    OPEN(Act.USE_STOCK, Optional.empty()),
    TAKE(Act.USE_STOCK, Optional.empty()),
    COUNT(Act.KEEP_STOCK, Optional.empty()),
    PLACE(Act.KEEP_STOCK, Optional.empty()),
    QUARANTINE(Act.KEEP_STOCK, Optional.of(LotMove.QUARANTINE)),
    RELEASE(Act.DECIDE_STORAGE, Optional.of(LotMove.RELEASE)),
    REJECT(Act.CHECK_LOT, Optional.of(LotMove.REJECT)),
    USED_UP(Act.KEEP_STOCK, Optional.of(LotMove.USE_UP)),
    DESTROY(Act.KEEP_STOCK, Optional.of(LotMove.DESTROY));

    private final Act act;
    private final Optional<LotMove> move;

    LotAct(Act act, Optional<LotMove> move) {
        this.act = act;
        this.move = move;
    }

    Act act() {
        return act;
    }

    /**
     * Tells whether the state of the lot allows it.
     *
     * @param clashing whether stations decided on it differently
     */
    boolean fits(Lot lot, boolean clashing) {
        return switch (this) {
            case SETTLE -> clashing;
            case OPEN -> lot.state().kept() && lot.sealedPouches() > 0;
            case TAKE -> lot.state().kept();
            case COUNT, PLACE -> lot.state().kept() || lot.state() == LotState.USED_UP;
            case WAIVE -> lot.waivable() && allowed(lot);
            case USED_UP -> lot.strips().left().signum() == 0 && allowed(lot);
            default -> allowed(lot);
        };
    }

    private boolean allowed(Lot lot) {
        return move.flatMap(to -> to.from(lot.state())).isPresent();
    }

    /** Returns what is most likely to be done next; empty when nothing more is. */
    static Optional<LotAct> next(Lot lot, LocalDate today, boolean clashing) {
        if (clashing) {
            return Optional.of(SETTLE);
        }
        if (lot.state() == LotState.REJECTED || lot.state().kept() && lot.expired(today)) {
            return Optional.of(DESTROY);
        }
        return switch (lot.state()) {
            case QUARANTINED, QUARANTINED_UNCHECKED -> Optional.of(RELEASE);
            case AWAITING_CHECK -> Optional.of(CHECK);
            case FIT -> Optional.of(ofFit(lot));
            default -> Optional.empty();
        };
    }

    private static LotAct ofFit(Lot lot) {
        if (lot.strips().missing().signum() > 0) {
            return COUNT;
        }
        if (lot.strips().left().signum() == 0) {
            return USED_UP;
        }
        return lot.sealedPouches() > 0 ? OPEN : COUNT;
    }
}
