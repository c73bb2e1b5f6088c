package padwright.language.archive;

/**
 * The name that a file gives to a plan, and where.
 *
 * @param line from 1
 * @param column from 1
 */
record PlanName(String name, int line, int column) {
}
