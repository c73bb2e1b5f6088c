package padwright.workup.solve;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import padwright.engine.clock.ClockHour;
import padwright.engine.evidence.FeltRound;
import padwright.engine.evidence.FilmInPlace;
import padwright.engine.evidence.PadModel;
import padwright.engine.evidence.Posterior;
import padwright.engine.evidence.RimNow;
import padwright.engine.length.Length;
import padwright.engine.rim.RimProfile;
import padwright.model.plan.Round;
import padwright.workup.remember.Remembered;
import padwright.workup.service.KeyJob;
import padwright.workup.words.Phrase;

/**
 * What is known of a pad, and what its rounds tell.
 *
 * @param rounds none where it was not felt
 */
public record PadEvidence(PadModel pad, List<FeltRound> rounds) {

	private static final double[] NO_LIFT = new double[ClockHour.STATIONS];

	private record Refilled(PadEvidence evidence, FilmInPlace now, FilmInPlace then) {
	}

	private static final Remembered<Refilled, Length> SOONER = new Remembered<>(400,
			asked -> asked.evidence.median(asked.now, asked.then));

	public PadEvidence {
		rounds = List.copyOf(rounds);
	}

	/**
	 * Of all rounds of a row before it was delivered; nothing where one cannot be used, or there is none.
	 *
	 * @param why told the reason where there is no answer
	 */
	public static Optional<PadEvidence> of(KeyJob job, Consumer<Phrase> why) {
		return FeltRounds.of(job, why).map(rounds -> new PadEvidence(PadBelief.of(job).model(), rounds));
	}

	/** Of the rounds of a row up to one of them, the delivered one too; nothing where one cannot be used. */
	public static Optional<PadEvidence> upTo(KeyJob job, Round last) {
		return FeltRounds.upTo(job, last).map(rounds -> new PadEvidence(PadBelief.of(job).model(), rounds));
	}

	/** What is known of a pad that was not felt, or whose rounds cannot be used. */
	public static PadEvidence unfelt(KeyJob job) {
		return new PadEvidence(PadBelief.of(job).model(), List.of());
	}

	/** The film that was in place when it was felt last. */
	public FilmInPlace film() {
		return rounds.isEmpty() ? FilmInPlace.NONE : rounds.get(rounds.size() - 1).film();
	}

	/** Possible gaps with this film in place, each as likely as any other. */
	public List<RimProfile> gaps(FilmInPlace film) {
		int hinge = pad.hinge().side().station();
		return Posterior.of(pad, rounds, film).rims().stream().map(rim -> profile(rim.gap(NO_LIFT), hinge)).toList();
	}

	private static RimProfile profile(double[] fromHinge, int hinge) {
		long[] gaps = new long[ClockHour.STATIONS];
		Arrays.setAll(gaps, station -> Math.round(fromHinge[Math.floorMod(station - hinge, ClockHour.STATIONS)]));
		return RimProfile.ofNanometres(gaps);
	}

	/**
	 * By how much sooner the key is likely to meet its rim with other film in place, as a way of the middle of the cup; below
	 * zero where later. What is coupled to it follows that. The median, since a short arm makes much of little.
	 */
	public Length sooner(FilmInPlace now, FilmInPlace then) {
		return now.equals(then) ? Length.ZERO : SOONER.of(new Refilled(this, now, then));
	}

	/** The same rims are looked at with either film. */
	private Length median(FilmInPlace now, FilmInPlace then) {
		List<RimNow> before = Posterior.of(pad, rounds, now).rims();
		List<RimNow> after = Posterior.of(pad, rounds, then).rims();
		double[] sooner = new double[before.size()];
		Arrays.setAll(sooner, rim -> turn(before.get(rim)) - turn(after.get(rim)));
		Arrays.sort(sooner);
		return new Length(Math.round(sooner[sooner.length / 2]));
	}

	/** The way of the middle of the cup until the face first meets the rim. */
	private static double turn(RimNow rim) {
		double turn = Double.POSITIVE_INFINITY;
		for (int station = 0; station < ClockHour.STATIONS; station++) {
			turn = Math.min(turn, rim.clearance()[station] / rim.weights()[station]);
		}
		return turn;
	}
}
