package padwright.workup.compare;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import padwright.engine.film.PartialShim;
import padwright.engine.height.FlushPad;
import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.workup.parts.FitWords;
import padwright.workup.parts.RowWork;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.RoundEffect;
import padwright.workup.words.Messages;

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
		add(Messages.of("compare.aspect.before"), text(then.spreadBefore()), text(now.spreadBefore()),
				by(then.spreadBefore(), now.spreadBefore(), "compare.more", "compare.less"), changes);
		add(Messages.of("compare.aspect.after"), text(then.spreadAfter()), text(now.spreadAfter()),
				by(then.spreadAfter(), now.spreadAfter(), "compare.more", "compare.less"), changes);
		add(Messages.of("compare.aspect.delivered"), text(then.delivered()), text(now.delivered()),
				by(then.delivered(), now.delivered(), "compare.more", "compare.less"), changes);
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
		String each = gaps.stream().map(KeyAspects::thou).collect(Collectors.joining(" "));
		return gaps.size() > 1 ? Messages.of("compare.gaps", each, text(empty())) : text(empty());
	}

	private Optional<Length> stackSum() {
		return work.stack().isEmpty() ? Optional.empty()
				: work.stack().stream().reduce(Length::plus);
	}

	/** The thickest first, so that the order of writing is no change. */
	private String stackText() {
		return stackSum().map(sum -> work.stack().stream().sorted((one, other) -> other.compareTo(one))
				.map(KeyAspects::thou).collect(Collectors.joining(" + ")) + " = " + thou(sum)).orElse(notSaid());
	}

	/** All that lie behind the pad: of earlier rounds and the last. */
	private String pieces() {
		if (work.job().lastRound().isEmpty()) {
			return notSaid();
		}
		String words = Stream.concat(work.earlierPieces().stream(), work.pieces().stream()).map(PartialShim::toString)
				.collect(Collectors.joining(", "));
		return words.isEmpty() ? Messages.of("compare.none") : words;
	}

	private Optional<Length> spreadBefore() {
		return solution.level().map(answer -> answer.solution().spreadBefore());
	}

	private Optional<Length> spreadAfter() {
		return solution.level().map(answer -> answer.solution().spreadAfter());
	}

	private Optional<Length> delivered() {
		return Optional.ofNullable(work.job().service().getDelivered())
				.flatMap(felt -> RoundEffect.of(work.job(), felt)).map(RoundEffect::before);
	}

	static String notSaid() {
		return Messages.of("compare.notSaid");
	}

	private static String text(Optional<Length> length) {
		return length.map(KeyAspects::thou).orElse(notSaid());
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
		BigDecimal difference = shown(now.get()).subtract(shown(then.get()));
		return difference.signum() == 0 ? ""
				: Messages.of(difference.signum() > 0 ? more : less, difference.abs().stripTrailingZeros().toPlainString());
	}

	private static BigDecimal shown(Length length) {
		return length.in(LengthUnit.THOU, 2);
	}

	private static String thou(Length length) {
		return shown(length).toPlainString();
	}
}
