/** Audit packs: which entries belong in one, the files of one, and how long records are kept. */
package wickbench.ledger.pack;
