package padwright.engine.bench;

import java.util.List;
import java.util.stream.LongStream;

import padwright.engine.bench.BenchWork.Played;
import padwright.engine.bench.BenchWork.Told;

/**
 * How many pads went together.
 *
 * @param pads all of them
 */
public record RoundsTable(List<Played> pads) {

	/** Plays pads 1 to {@code count}. */
	public static RoundsTable play(int count, Instrument instrument, int hours, boolean graded, Method method) {
		return new RoundsTable(LongStream.rangeClosed(1, count).parallel()
				.mapToObj(number -> BenchWork.play(number, instrument, hours, graded, method)).toList());
	}

	/** The share in which every hour dragged after so many rounds of film, or fewer. */
	public double levelAfter(int rounds) {
		return share(pads.stream().filter(pad -> pad.rounds().filter(after -> after <= rounds).isPresent()).count());
	}

	public double never() {
		return share(pads.stream().filter(pad -> pad.rounds().isEmpty()).count());
	}

	/** Of the pads in which every hour dragged, the share that was truly level all around. */
	public double trulyLevel() {
		return ofFelt(pads.stream().filter(pad -> pad.rounds().isPresent() && pad.level()).count());
	}

	/** The same, to within a tenth of a thou more. */
	public double nearlyLevel() {
		return ofFelt(pads.stream().filter(pad -> pad.rounds().isPresent() && pad.nearlyLevel()).count());
	}

	private double ofFelt(long count) {
		return count / (double) Math.max(1, pads.stream().filter(pad -> pad.rounds().isPresent()).count());
	}

	private double share(long count) {
		return count / (double) pads.size();
	}

	/** Mean rounds of film, eight where it was never level. */
	public double meanRounds() {
		return pads.stream().mapToInt(pad -> pad.rounds().orElse(BenchWork.MOST_ROUNDS)).average().orElseThrow();
	}

	/** Mean hours that were felt in all. */
	public double meanReadings() {
		return pads.stream().mapToInt(Played::readings).average().orElseThrow();
	}

	public double meanPieces() {
		return pads.stream().mapToInt(Played::pieces).average().orElseThrow();
	}

	/** All chances that were told. */
	public List<Told> told() {
		return pads.stream().map(Played::told).flatMap(List::stream).toList();
	}
}
