/** Lots folded from entries, and the acts that append them. */
package wickbench.stock.room;
