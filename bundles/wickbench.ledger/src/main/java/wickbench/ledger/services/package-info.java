/** What the framework makes of this bundle: the index view, the results and the commands. */
package wickbench.ledger.services;
