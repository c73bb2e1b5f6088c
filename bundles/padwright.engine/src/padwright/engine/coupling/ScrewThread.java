package padwright.engine.coupling;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import padwright.engine.length.Length;

/**
 * A standard miniature screw thread as it is met in adjusters.
 *
 * @param designation as in {@code UNM 1.0} or {@code 8 BA}
 * @param diameter nominal major diameter, more than zero
 * @param pitch travel in one turn, more than zero
 */
public record ScrewThread(String designation, Length diameter, Length pitch) {

	private static final List<ScrewThread> UNM = Stream.of(
			unm("0.3", "0.080"), unm("0.35", "0.090"), unm("0.4", "0.100"), unm("0.45", "0.100"),
			unm("0.5", "0.125"), unm("0.55", "0.125"), unm("0.6", "0.150"), unm("0.7", "0.175"),
			unm("0.8", "0.200"), unm("0.9", "0.225"), unm("1.0", "0.250"), unm("1.1", "0.250"),
			unm("1.2", "0.250"), unm("1.4", "0.300")).toList();

	private static final List<ScrewThread> BA = IntStream.rangeClosed(0, 16).mapToObj(ScrewThread::ba).toList();

	/** @throws IllegalArgumentException if a size is not positive */
	public ScrewThread {
		if (diameter.signum() <= 0 || pitch.signum() <= 0) {
			throw new IllegalArgumentException("thread " + designation + " needs a diameter and a pitch above zero");
		}
	}

	/** Unified miniature threads, 0.3 to 1.4 mm, finest first; pitches after Machinery's Handbook, 31st edition. */
	public static List<ScrewThread> unm() {
		return UNM;
	}

	/**
	 * British Association threads 0 to 16, coarsest first. Pitch is 0.9ᵏ mm rounded to 0.01 mm, diameter 6·p^1.2 mm
	 * of the unrounded pitch to two figures, the definition of the series.
	 */
	public static List<ScrewThread> ba() {
		return BA;
	}

	/**
	 * The thread of a designation: {@code UNM 1.0} (mm; {@code UNM 1} is the same) or {@code 8 BA}, in any case.
	 *
	 * @throws IllegalArgumentException if neither table has it
	 */
	public static ScrewThread of(String designation) {
		String wanted = canonical(designation);
		return Stream.concat(UNM.stream(), BA.stream())
				.filter(thread -> canonical(thread.designation).equals(wanted))
				.findFirst()
				.orElseThrow(() -> new IllegalArgumentException(
						"no thread \"" + designation + "\": UNM 0.3 to UNM 1.4 and 0 BA to 16 BA are known"));
	}

	/** Without spaces and case, and without the zeros that end a decimal number. */
	private static String canonical(String designation) {
		String joined = designation.replaceAll("\\s+", "").toUpperCase(Locale.ROOT);
		return joined.replaceAll("(\\.\\d*?)0+$", "$1").replaceAll("\\.$", "");
	}

	private static ScrewThread unm(String diameter, String pitch) {
		return new ScrewThread("UNM " + diameter, Length.millimetres(diameter), Length.millimetres(pitch));
	}

	private static ScrewThread ba(int number) {
		BigDecimal pitch = new BigDecimal("0.9").pow(number);
		BigDecimal diameter = new BigDecimal(6 * StrictMath.pow(pitch.doubleValue(), 1.2), new MathContext(2));
		return new ScrewThread(number + " BA", Length.millimetres(diameter.toPlainString()),
				Length.millimetres(pitch.setScale(2, RoundingMode.HALF_UP).toPlainString()));
	}
}
