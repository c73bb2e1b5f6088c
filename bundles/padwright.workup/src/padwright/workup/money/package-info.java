/** Estimates, what was agreed, invoices and their numbers, from what plans say, in exact decimals. */
package padwright.workup.money;
