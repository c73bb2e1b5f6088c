package padwright.workup.solve;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

import padwright.engine.clock.ClockHour;
import padwright.engine.evidence.DoubtedReading;
import padwright.engine.evidence.FeltRound;
import padwright.engine.evidence.FilmInPlace;
import padwright.engine.evidence.GapBand;
import padwright.engine.evidence.PadModel;
import padwright.engine.evidence.Posterior;
import padwright.engine.length.Length;
import padwright.workup.remember.Remembered;

/**
 * Where the gap between a pad and its rim lies, as far as its rounds tell. A model: the feeler decides.
 *
 * @param chance that it is nowhere wider than the seat allows, 0 to 1
 * @param band of the gap, hour by hour
 * @param doubted readings that do not go with the others
 */
public record PadGap(double chance, GapBand band, List<DoubtedReading> doubted) {

	private record Question(PadModel pad, List<FeltRound> rounds, FilmInPlace now, Length seat) {
	}

	private static final Remembered<Question, PadGap> KNOWN = new Remembered<>(400, PadGap::answer);

	public PadGap {
		doubted = List.copyOf(doubted);
	}

	/** After all rounds, with the film that is in place now. */
	static PadGap of(PadModel pad, List<FeltRound> rounds, FilmInPlace now, Length seat) {
		return KNOWN.of(new Question(pad, rounds, now, seat));
	}

	private static PadGap answer(Question asked) {
		Posterior posterior = Posterior.of(asked.pad, asked.rounds, asked.now);
		return new PadGap(posterior.chanceWithin(asked.seat), posterior.band(), posterior.doubted());
	}

	/** The hour at which the gap is likely to be widest. */
	public ClockHour widest() {
		return widest(band);
	}

	/** The hour at which a gap is likely to be widest; the first of equals. */
	public static ClockHour widest(GapBand band) {
		return IntStream.range(0, ClockHour.STATIONS).mapToObj(ClockHour::new)
				.max(Comparator.comparing((ClockHour hour) -> band.mid().at(hour)).thenComparing(hour -> band.high().at(hour))
						.thenComparing(Comparator.reverseOrder())).orElseThrow();
	}
}
