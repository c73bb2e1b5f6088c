package padwright.engine.coupling;

import java.math.BigDecimal;
import java.math.RoundingMode;

import padwright.engine.length.Length;

/**
 * How far to turn an adjusting screw: in (clockwise) for a positive travel, so that the driven key closes earlier; out
 * for a negative one.
 *
 * @param travel how far the tip of the screw shall move, signed
 * @param pitch travel in one turn, more than zero
 */
public record ScrewTurn(Length travel, Length pitch) implements Adjustment {

	private static final String[] PARTS = { "", "an eighth of a turn", "a quarter turn", "three eighths of a turn",
			"half a turn", "five eighths of a turn", "three quarters of a turn", "seven eighths of a turn" };
	private static final String[] FRACTIONS = { "", " 1/8", " 1/4", " 3/8", " 1/2", " 5/8", " 3/4", " 7/8" };

	/** @throws IllegalArgumentException if the pitch is not positive */
	public ScrewTurn {
		if (pitch.signum() <= 0) {
			throw new IllegalArgumentException("a screw of pitch " + pitch + " does not travel");
		}
	}

	/** Signed turns, travel / pitch, to four decimals (half even). */
	public BigDecimal turns() {
		return turns(1, 4);
	}

	/** Signed turns in eighths, to the nearest whole eighth (half even). */
	public long eighths() {
		return turns(8, 0).longValueExact();
	}

	@Override
	public String inWords() {
		if (travel.signum() == 0) {
			return "leave as it is";
		}
		return amount(Math.abs(eighths())) + (travel.signum() > 0 ? " in" : " out");
	}

	private String amount(long eighths) {
		if (eighths == 0) {
			return "less than an eighth of a turn";
		}
		return (isWholeEighths() ? "" : "about ") + size(eighths / 8, (int) (eighths % 8));
	}

	private static String size(long whole, int eighths) {
		if (whole == 0) {
			return PARTS[eighths];
		}
		return whole + FRACTIONS[eighths] + (whole == 1 && eighths == 0 ? " turn" : " turns");
	}

	private boolean isWholeEighths() {
		return travel.times(8).nanometres() % pitch.nanometres() == 0;
	}

	private BigDecimal turns(int parts, int decimals) {
		return BigDecimal.valueOf(travel.times(parts).nanometres())
				.divide(BigDecimal.valueOf(pitch.nanometres()), decimals, RoundingMode.HALF_EVEN);
	}
}
