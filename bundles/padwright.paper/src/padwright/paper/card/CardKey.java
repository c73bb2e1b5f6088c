package padwright.paper.card;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import padwright.drawing.clock.RimReading;
import padwright.engine.evidence.GapBand;
import padwright.engine.film.PartialShim;

/**
 * One key of a bench card.
 *
 * @param name in the system
 * @param label as the technician calls it, as in {@code F♯}
 * @param fitText pad and backing disc, as in {@code Rigid on Disc20}; empty where the head of the card says it
 * @param emptyText the gaps of the empty cup, as in {@code 15 15 14.5 15.5}; empty if not measured
 * @param height the full shims, if solved
 * @param readings of the last round, blank ones at the hours still to be read
 * @param gap where it lies by the readings, if there are any
 * @param earlierPieces partial shims that are in the cup already
 * @param work what is to be done after the readings; empty if that is not known
 * @param level how likely the pad is level, if there are readings
 * @param notes what else the technician must know
 * @param closes labels of the keys that this key closes with it
 * @param found how its pad was found, as in {@code found torn}; empty if that is not said
 * @param done what the plan says is done, and is ticked
 */
public record CardKey(String name, String label, String fitText, String emptyText, Optional<CardHeight> height,
		List<RimReading> readings, Optional<GapBand> gap, List<PartialShim> earlierPieces,
		Optional<CardWork> work, Optional<CardLevel> level, List<CardNote> notes, List<String> closes,
		String found, Set<CardStep> done) {

	public CardKey {
		readings = List.copyOf(readings);
		earlierPieces = List.copyOf(earlierPieces);
		notes = List.copyOf(notes);
		closes = List.copyOf(closes);
		done = Set.copyOf(done);
	}

	/** A key at which nothing is said as done. */
	public CardKey(String name, String label, String fitText, String emptyText, Optional<CardHeight> height,
			List<RimReading> readings, Optional<GapBand> gap, List<PartialShim> earlierPieces, Optional<CardWork> work,
			Optional<CardLevel> level, List<CardNote> notes, List<String> closes) {
		this(name, label, fitText, emptyText, height, readings, gap, earlierPieces, work, level, notes, closes, "",
				Set.of());
	}

	/** What is ticked off at it: a key that moves no other needs no regulation. */
	List<CardStep> steps() {
		return Stream.of(CardStep.values()).filter(step -> step != CardStep.REGULATE || !closes.isEmpty()).toList();
	}

	/** Partial shims to place now. */
	List<PartialShim> pieces() {
		return work.map(CardWork::place).orElse(List.of());
	}
}
