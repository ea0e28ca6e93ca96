/** Blind rounds: their odds, their seal, their calls and their scores. */
package wickbench.training.round;
