package padwright.paper.sheet;

/**
 * A key that closes another.
 *
 * @param driver index of the key in the layout, from 0
 * @param driven likewise
 * @param adjuster in words, as in {@code screw UNM 1.00, ratio 1.2}; empty if not said
 */
public record SheetCoupling(int driver, int driven, String adjuster) {
}
