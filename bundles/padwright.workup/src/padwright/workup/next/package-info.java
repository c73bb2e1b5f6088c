/** What there is to do next at the bench, from what plans say alone. */
package padwright.workup.next;
