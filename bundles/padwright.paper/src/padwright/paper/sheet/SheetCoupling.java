package padwright.paper.sheet;

/**
 * A key that moves or holds another.
 *
 * @param driver index of the key in the layout, from 0
 * @param effect what it does: {@code closes}, {@code opens} or {@code holds}
 * @param driven likewise
 * @param adjuster in words, as in {@code screw UNM 1.00, ratio 1.2}; empty if not said
 */
public record SheetCoupling(int driver, String effect, int driven, String adjuster) {
}
