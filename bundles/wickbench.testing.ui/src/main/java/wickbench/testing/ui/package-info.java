/** What the tests of pages share. */
package wickbench.testing.ui;
