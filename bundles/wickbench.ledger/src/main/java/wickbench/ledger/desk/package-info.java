/** The doors of {@link wickbench.ledger.acts}: their tables, their rules, their entries. Nothing is exported. */
package wickbench.ledger.desk;
