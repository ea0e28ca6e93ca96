/** Looks whether the program itself is well, in plain words. */
package wickbench.parts.health;
