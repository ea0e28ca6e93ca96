/** The commands of training, and what they print. */
package wickbench.training.face;
