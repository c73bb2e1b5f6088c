package padwright.workup.compare;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import padwright.engine.film.PartialShim;
import padwright.engine.height.FlushPad;
import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.model.plan.Round;
import padwright.workup.parts.FitWords;
import padwright.workup.parts.RowWork;
import padwright.workup.solve.FilmInCup;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.RoundEffect;
import padwright.workup.words.Chance;

/** What a service says of one key, aspect by aspect, in trade words; lengths in thou. */
final class KeyAspects {

	private static final String NOT_SAID = "not said";

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
		add("found", then.found(), now.found(), "", changes);
		add("fit", then.fit(), now.fit(), "", changes);
		add("empty cup, mean", then.emptyText(), now.emptyText(), by(then.empty(), now.empty(), "wider", "narrower"),
				changes);
		add("full shims", then.stackText(), now.stackText(), by(then.stackSum(), now.stackSum(), "more", "less"),
				changes);
		add("pieces", then.pieces(), now.pieces(), "", changes);
		add("level as found", then.chance(then.found(false)), now.chance(now.found(false)), "", changes);
		add("level after", then.chance(then.after()), now.chance(now.after()), "", changes);
		add("level as delivered", then.chance(then.found(true)), now.chance(now.found(true)), "", changes);
		return changes;
	}

	private static void add(String what, String then, String now, String by, List<Change> changes) {
		if (!now.equals(NOT_SAID) && !then.equals(now)) {
			changes.add(new Change(what, then, now, by));
		}
	}

	private String found() {
		return work.job().service().isSetFound() ? work.job().service().getFound().getLiteral() : NOT_SAID;
	}

	private String fit() {
		String words = FitWords.of(work.job().fitting());
		return words.isEmpty() ? NOT_SAID : words;
	}

	/** Mean gap of the empty cup. */
	private Optional<Length> empty() {
		List<Length> gaps = work.job().emptyGaps();
		return gaps.isEmpty() ? Optional.empty() : Optional.of(FlushPad.fullShims(gaps));
	}

	private String emptyText() {
		return text(empty());
	}

	private Optional<Length> stackSum() {
		return work.stack().isEmpty() ? Optional.empty()
				: work.stack().stream().reduce(Length::plus);
	}

	/** The thickest first, so that the order of writing is no change. */
	private String stackText() {
		return stackSum().map(sum -> work.stack().stream().sorted((one, other) -> other.compareTo(one))
				.map(KeyAspects::thou).collect(Collectors.joining(" + ")) + " = " + thou(sum)).orElse(NOT_SAID);
	}

	/** All that lie behind the pad: of earlier rounds and the last. */
	private String pieces() {
		if (work.job().lastRound().isEmpty()) {
			return NOT_SAID;
		}
		String words = new FilmInCup(work.earlierPieces(), Length.ZERO)
				.after(work.takenOut(), work.pieces(), Length.ZERO).pieces().stream().map(PartialShim::toString)
				.collect(Collectors.joining(", "));
		return words.isEmpty() ? "none" : words;
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
		return share.map(Chance::of).orElse(NOT_SAID);
	}

	private static String text(Optional<Length> length) {
		return length.map(KeyAspects::thou).orElse(NOT_SAID);
	}

	/** The difference of what is shown, so that the figures add up. */
	private static String by(Optional<Length> then, Optional<Length> now, String more, String less) {
		if (then.isEmpty() || now.isEmpty()) {
			return "";
		}
		BigDecimal difference = shown(now.get()).subtract(shown(then.get()));
		return difference.signum() == 0 ? ""
				: difference.abs().stripTrailingZeros().toPlainString() + " thou " + (difference.signum() > 0 ? more : less);
	}

	private static BigDecimal shown(Length length) {
		return length.in(LengthUnit.THOU, 2);
	}

	private static String thou(Length length) {
		return shown(length).toPlainString();
	}
}
