/** What a plan says of the work around its pads: what came, what was done, what is still open. */
package padwright.workup.job;
