package padwright.workup.choose;

import java.math.BigDecimal;

/**
 * A reason for or against a pad, in words.
 *
 * @param text as the shop wrote it
 * @param weight how much it counts, above 0; below 0 for a reason against
 */
public record Reason(String text, BigDecimal weight) {

	public boolean isFor() {
		return weight.signum() > 0;
	}
}
