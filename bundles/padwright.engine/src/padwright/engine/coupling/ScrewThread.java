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
 * A standard miniature screw thread as it is met in adjusters, pivots and pad screws.
 *
 * @param designation as in {@code UNM 1.0}, {@code 8 BA}, {@code M 1.4}, {@code M 1.4 x 0.2}, {@code 0-80 UNF} or {@code S 0.9}
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

	private static final List<ScrewThread> WATCH = UNM.stream().map(ScrewThread::watch).toList();

	private static final List<ScrewThread> METRIC = Stream.of(
			metric("1", "0.25", "0.2"), metric("1.1", "0.25", "0.2"), metric("1.2", "0.25", "0.2"),
			metric("1.4", "0.3", "0.2"), metric("1.6", "0.35", "0.2"), metric("1.7", "0.35"),
			metric("1.8", "0.35", "0.2"), metric("2", "0.4", "0.25"), metric("2.2", "0.45", "0.25"),
			metric("2.3", "0.4"), metric("2.5", "0.45", "0.35"), metric("2.6", "0.45"), metric("3", "0.5", "0.35"),
			metric("3.5", "0.6", "0.35"), metric("4", "0.7", "0.5"), metric("4.5", "0.75", "0.5"),
			metric("5", "0.8", "0.5"), metric("6", "1", "0.75")).flatMap(each -> each).toList();

	private static final List<ScrewThread> INCH = Stream.of(inch(0, 80, "UNF"), inch(1, 64, "UNC"), inch(1, 72, "UNF"),
			inch(2, 56, "UNC"), inch(2, 64, "UNF"), inch(3, 48, "UNC"), inch(3, 56, "UNF"), inch(4, 40, "UNC"),
			inch(4, 48, "UNF"), inch(5, 40, "UNC"), inch(5, 44, "UNF"), inch(6, 32, "UNC"), inch(6, 40, "UNF"),
			inch(8, 32, "UNC"), inch(8, 36, "UNF"), inch(10, 24, "UNC"), inch(10, 32, "UNF"), inch(12, 24, "UNC"),
			inch(12, 28, "UNF")).toList();

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

	/** Miniature threads of watches, ISO 1501, series S, 0.3 to 1.4 mm: the diameters and pitches of UNM. */
	public static List<ScrewThread> watch() {
		return WATCH;
	}

	/**
	 * Metric threads, 1 to 6 mm, the coarse pitch of each size and then its fine one, after ISO 261 and 262; and M 1.7,
	 * M 2.3 and M 2.6, which are no longer in them and are met in old instruments.
	 */
	public static List<ScrewThread> metric() {
		return METRIC;
	}

	/**
	 * Unified inch threads by number, coarse and fine, 0 to 12: pitch is 25.4 mm over the threads per inch, rounded to the
	 * nanometre; diameter 0.060 + 0.013 n inch. Series after ASME B1.1.
	 */
	public static List<ScrewThread> inch() {
		return INCH;
	}

	/**
	 * The thread of a designation, in any case: {@code UNM 1.0} ({@code UNM 1} is the same), {@code 8 BA}, {@code M 1.4},
	 * {@code M 1.4 x 0.2}, {@code 0-80 UNF} ({@code 0-80} and {@code #0-80} are the same), {@code S 0.9}.
	 *
	 * @throws IllegalArgumentException if no table has it
	 */
	public static ScrewThread of(String designation) {
		String wanted = canonical(designation);
		return Stream.of(UNM, BA, METRIC, INCH, WATCH).flatMap(List::stream)
				.filter(thread -> canonical(thread.designation).equals(wanted))
				.findFirst()
				.orElseThrow(() -> new IllegalArgumentException("no thread \"" + designation
						+ "\": UNM 0.3 to 1.4, S 0.3 to 1.4, 0 BA to 16 BA, M 1 to M 6 and 0-80 to 12-28 are known"));
	}

	/** Without spaces, case, sign and series of an inch thread, and without the zeros that end a decimal number. */
	private static String canonical(String designation) {
		String joined = designation.replaceAll("\\s+", "").toUpperCase(Locale.ROOT).replace('\u00D7', 'X');
		String bare = joined.replaceAll("^#?(\\d+-\\d+)(UNC|UNF)?$", "$1");
		return bare.replaceAll("(\\.\\d*?)0+(?=X|$)", "$1").replaceAll("\\.(?=X|$)", "");
	}

	private static ScrewThread watch(ScrewThread unified) {
		return new ScrewThread(unified.designation.replace("UNM", "S"), unified.diameter, unified.pitch);
	}

	private static Stream<ScrewThread> metric(String diameter, String coarse, String... fine) {
		Length size = Length.millimetres(diameter);
		return Stream.concat(Stream.of(new ScrewThread("M " + diameter, size, Length.millimetres(coarse))),
				Stream.of(fine).map(pitch -> new ScrewThread("M " + diameter + " x " + pitch, size, Length.millimetres(pitch))));
	}

	private static ScrewThread inch(int number, int threads, String series) {
		BigDecimal pitch = new BigDecimal("25.4").divide(BigDecimal.valueOf(threads), 6, RoundingMode.HALF_EVEN);
		return new ScrewThread(number + "-" + threads + " " + series, Length.thou(String.valueOf(60 + 13 * number)),
				Length.millimetres(pitch.toPlainString()));
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
