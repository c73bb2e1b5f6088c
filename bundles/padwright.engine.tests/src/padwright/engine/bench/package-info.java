/**
 * A bench to try answers at: pads over rims that nobody knows, a hand that feels them with some scatter and places film a
 * little off, round after round until every hour drags. All of it is invented; rims are drawn from a wider law than the
 * one that the answers assume.
 */
package padwright.engine.bench;
