package wickbench.stock.room;

import java.time.ZoneId;

/**
 * By what a lot is judged beside what was told of it.
 *
 * @param zone by whose days labels expire
 */
record Terms(KitBook kits, Inserts inserts, Waiving waiving, ZoneId zone) {}
