package padwright.views.section;

import java.util.List;
import java.util.Optional;

import padwright.engine.height.HeightEquation;
import padwright.engine.length.Length;
import padwright.views.Messages;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.HeightWork;
import padwright.workup.words.Phrase;

/**
 * All that the section of a cup shows.
 *
 * @param key its name
 * @param label as the trade calls it
 * @param cup inside diameter, if known
 * @param depth of the cup, if known
 * @param gap mean of the empty-cup gaps, if measured
 * @param hole inside diameter of the tone hole, if known
 * @param rim width of its rim, if known
 * @param seat how far the rim sinks into the face
 * @param layers from the floor of the cup to the face
 * @param terms of what the full shims have to sum to; empty where that is not known
 * @param target their sum, if known
 * @param inCup the sum of those noted, if any are
 * @param isOff whether that misses the target by more than the seat allows
 * @param tolerance how far the target may be off by pad and disc, in words; empty if that is not known
 * @param note what the target rests on, or what is needed to know it
 */
public record CupSectionState(String key, String label, Optional<Length> cup, Optional<Length> depth,
		Optional<Length> gap, Optional<Length> hole, Optional<Length> rim, Length seat, List<SectionLayer> layers,
		List<Term> terms, Optional<Length> target, Optional<Length> inCup, boolean isOff, String tolerance, String note) {

	public CupSectionState {
		layers = List.copyOf(layers);
		terms = List.copyOf(terms);
	}

	/** A section of nothing: no key is chosen. */
	public static CupSectionState empty() {
		return new CupSectionState("", "", Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
				Optional.empty(), Length.ZERO, List.of(), List.of(), Optional.empty(), Optional.empty(), false, "",
				"");
	}

	/** The section of a row's cup. */
	public static CupSectionState of(KeyJob job) {
		Optional<HeightWork> work = HeightWork.of(job);
		Optional<HeightEquation> equation = work.flatMap(HeightWork::equation);
		CupContents contents = CupContents.of(job);
		return new CupSectionState(job.name(), job.key().map(key -> key.label()).orElse(job.name()),
				positive(job.key().flatMap(key -> key.cupDiameter())),
				positive(job.key().flatMap(key -> key.cupDepth())),
				equation.map(HeightEquation::emptyGap).or(() -> work.map(HeightWork::target)),
				positive(job.key().flatMap(key -> key.holeDiameter())),
				positive(job.key().flatMap(key -> key.rimWidth())), contents.seat(), contents.layers(),
				work.map(known -> terms(known, equation)).orElse(List.of()), work.map(HeightWork::target),
				Optional.of(job.stackSum()).filter(sum -> !job.stack().isEmpty()),
				!job.stack().isEmpty() && work.filter(known -> known.isOff(job.stack())).isPresent(),
				work.flatMap(HeightWork::toldTolerance).map(Phrase::words).orElse(""), note(work, equation));
	}

	private static Optional<Length> positive(Optional<Length> length) {
		return length.filter(known -> known.signum() > 0);
	}

	private static List<Term> terms(HeightWork work, Optional<HeightEquation> equation) {
		return equation.map(parts -> List.of(
				new Term(Messages.of("section.depth"), parts.cupDepth()),
				new Term(Messages.of("section.gap"), parts.emptyGap()),
				new Term(Messages.of("section.sinks"), parts.seat()),
				new Term(Messages.of("section.backing"), parts.backing().negated()),
				new Term(Messages.of(work.isMeasured() ? "section.measuredPad" : "section.pad"),
						parts.pad().negated())))
				.orElseGet(() -> List.of(new Term(Messages.of("section.gap"), work.target())));
	}

	private static String note(Optional<HeightWork> work, Optional<HeightEquation> equation) {
		if (work.isEmpty()) {
			return Messages.of("section.unmeasured");
		}
		return equation.isPresent() ? "" : Messages.of("section.shortcut");
	}

	/** How far the full shims noted fall short of the rim; below zero where they are too much. */
	public Optional<Length> missing() {
		return target.flatMap(wanted -> inCup.map(wanted::minus));
	}
}
