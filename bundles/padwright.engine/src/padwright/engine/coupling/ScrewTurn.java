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

	private static final int FULL_TURN = 360;
	private static final int CLOCK = 12;

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

	/** Unsigned whole degrees (half even); 360 and more for a whole turn and more. */
	public long degrees() {
		return turns(FULL_TURN, 0).abs().longValueExact();
	}

	/**
	 * Unsigned hours that the slot of the screwdriver passes on a clock, to a tenth (half even); 12 and more for a whole turn
	 * and more.
	 */
	public BigDecimal clockHours() {
		return turns(CLOCK, 1).abs();
	}

	private BigDecimal turns(int parts, int decimals) {
		return BigDecimal.valueOf(travel.times(parts).nanometres())
				.divide(BigDecimal.valueOf(pitch.nanometres()), decimals, RoundingMode.HALF_EVEN);
	}
}
