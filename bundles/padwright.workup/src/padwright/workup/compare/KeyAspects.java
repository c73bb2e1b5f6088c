package padwright.workup.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import padwright.engine.height.FlushPad;
import padwright.engine.length.Length;
import padwright.model.plan.Round;
import padwright.workup.parts.FitWords;
import padwright.workup.parts.RowWork;
import padwright.workup.solve.FilmInCup;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.RoundEffect;
import padwright.workup.words.Chance;
import padwright.workup.words.LengthWords;
import padwright.workup.words.Messages;
import padwright.workup.words.PieceWords;

/** What a service says of one key, aspect by aspect, in trade words; lengths in thou. */
final class KeyAspects {

	private final KeySolution solution;
	private final RowWork work;

	private KeyAspects(KeySolution solution) {
		this.solution = solution;
		this.work = RowWork.of(solution);
	}

	/**
	 * What differs, in the order of the work: pad, gap, height, level. What the later service does not speak of it left as
	 * it was.
	 */
	static List<Change> changes(KeySolution before, KeySolution after) {
		KeyAspects then = new KeyAspects(before);
		KeyAspects now = new KeyAspects(after);
		List<Change> changes = new ArrayList<>();
		add(Messages.of("compare.aspect.found"), then.found(), now.found(), "", changes);
		add(Messages.of("compare.aspect.fit"), then.fit(), now.fit(), "", changes);
		add(Messages.of("compare.aspect.empty"), then.emptyText(), now.emptyText(),
				by(then.empty(), now.empty(), "compare.wider", "compare.narrower"), changes);
		add(Messages.of("compare.aspect.stack"), then.stackText(), now.stackText(),
				by(then.stackSum(), now.stackSum(), "compare.more", "compare.less"), changes);
		ReadingChanges.felt(then.work.job(), now.work.job()).changes("compare.aspect.felt").forEach(changes::add);
		add(Messages.of("compare.aspect.pieces"), then.pieces(), now.pieces(), "", changes);
		add(Messages.of("compare.aspect.before"), then.chance(then.found(false)), now.chance(now.found(false)), "", changes);
		add(Messages.of("compare.aspect.after"), then.chance(then.after()), now.chance(now.after()), "", changes);
		add(Messages.of("compare.aspect.delivered"), then.chance(then.found(true)), now.chance(now.found(true)), "",
				changes);
		ReadingChanges.delivered(then.work.job(), now.work.job()).changes("compare.aspect.feltDelivered")
				.forEach(changes::add);
		return changes;
	}

	private static void add(String what, String then, String now, String by, List<Change> changes) {
		if (!now.equals(notSaid()) && !then.equals(now)) {
			changes.add(new Change(what, then, now, by));
		}
	}

	private String found() {
		return work.job().service().isSetFound()
				? Messages.of("compare.found." + work.job().service().getFound().getLiteral()) : notSaid();
	}

	private String fit() {
		String words = FitWords.of(work.job().fitting());
		return words.isEmpty() ? notSaid() : words;
	}

	/** Mean gap of the empty cup. */
	private Optional<Length> empty() {
		List<Length> gaps = work.job().emptyGaps();
		return gaps.isEmpty() ? Optional.empty() : Optional.of(FlushPad.fullShims(gaps));
	}

	/** Each gap, since the mean hides a cup that leans. */
	private String emptyText() {
		List<Length> gaps = work.job().emptyGaps();
		String each = gaps.stream().map(LengthWords::figure).collect(Collectors.joining(" "));
		return gaps.size() > 1 ? Messages.of("compare.gaps", each, text(empty())) : text(empty());
	}

	private Optional<Length> stackSum() {
		return work.stack().isEmpty() ? Optional.empty()
				: work.stack().stream().reduce(Length::plus);
	}

	/** The thickest first, so that the order of writing is no change. */
	private String stackText() {
		return stackSum().map(sum -> work.stack().stream().sorted((one, other) -> other.compareTo(one))
				.map(LengthWords::figure).collect(Collectors.joining(" + ")) + " = " + LengthWords.figure(sum)).orElse(notSaid());
	}

	/** All that lie behind the pad: of earlier rounds and the last. */
	private String pieces() {
		if (work.job().lastRound().isEmpty()) {
			return notSaid();
		}
		String words = new FilmInCup(work.earlierPieces(), Length.ZERO)
				.after(work.takenOut(), work.pieces(), Length.ZERO).pieces().stream().map(PieceWords::of)
				.collect(Collectors.joining(", "));
		return words.isEmpty() ? Messages.of("compare.none") : words;
	}

	/** What the last readings before any answer, or those as delivered, tell. */
	private Optional<Double> found(boolean delivered) {
		Optional<Round> round = delivered ? Optional.ofNullable(work.job().service().getDelivered())
				: work.job().lastRound();
		return round.flatMap(felt -> RoundEffect.of(work.job(), felt)).map(effect -> effect.felt().chance());
	}

	/** With the noted answer, or else the solved one. */
	private Optional<Double> after() {
		if (work.piecesNoted()) {
			return work.job().lastRound().flatMap(round -> RoundEffect.of(work.job(), round))
					.map(effect -> effect.last().chance());
		}
		return solution.level().map(answer -> answer.seat().chance());
	}

	/** How likely it is level; known to ten per cent at best. */
	private String chance(Optional<Double> share) {
		return share.map(Chance::of).orElse(notSaid());
	}

	static String notSaid() {
		return Messages.of("compare.notSaid");
	}

	private static String text(Optional<Length> length) {
		return length.map(LengthWords::figure).orElse(notSaid());
	}

	/**
	 * The difference of what is shown, so that the figures add up.
	 *
	 * @param more the key of the words for it where there is more now
	 */
	private static String by(Optional<Length> then, Optional<Length> now, String more, String less) {
		if (then.isEmpty() || now.isEmpty()) {
			return "";
		}
		Length difference = LengthWords.rounded(now.get()).minus(LengthWords.rounded(then.get()));
		return difference.signum() == 0 ? ""
				: Messages.of(difference.signum() > 0 ? more : less, LengthWords.withUnit(difference.abs()));
	}
}
