/** What a job costs: parts, time and tax in exact decimals, with every rounding stated. */
package padwright.engine.quote;
