/** What a shop learns from all its plans: figures with intervals and their evidence, or why they cannot be told. */
package padwright.workup.learn;
