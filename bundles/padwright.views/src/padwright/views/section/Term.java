package padwright.views.section;

import padwright.engine.length.Length;

/**
 * A line of a sum.
 *
 * @param name in words
 * @param length what is added; below zero where it is taken away
 */
public record Term(String name, Length length) {
}
