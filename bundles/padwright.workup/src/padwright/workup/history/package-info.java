/** What the services of an instrument tell over the years: how its pads moved, wore and tore. */
package padwright.workup.history;
