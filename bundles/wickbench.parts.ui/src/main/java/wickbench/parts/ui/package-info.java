/** The page Parts: which sets there are and what each brings, adding and removing them, and a look at the program itself. */
package wickbench.parts.ui;
