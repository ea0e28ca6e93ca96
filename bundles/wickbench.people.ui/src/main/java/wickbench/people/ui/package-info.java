/** The page People. */
package wickbench.people.ui;
