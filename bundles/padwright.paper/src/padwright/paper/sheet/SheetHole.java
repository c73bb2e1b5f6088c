package padwright.paper.sheet;

/**
 * A hole in the chart of fingerings.
 *
 * @param name as the mechanism names it
 * @param mark number of the key that covers it, or its own name
 */
public record SheetHole(String name, String mark) {
}
