package padwright.views.clock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import padwright.drawing.clock.RimReading;
import padwright.engine.clock.ClockHour;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.model.plan.Round;
import padwright.views.Figures;
import padwright.workup.parts.RowWork;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.FilmStore;
import padwright.workup.solve.LeafReading;
import padwright.workup.solve.PadGap;
import padwright.workup.solve.PlacedPieces;
import padwright.workup.solve.RoundEffect;
import padwright.workup.words.ClockWords;

/**
 * All that the rim clock shows of a row: its last round, with the pieces of the rounds before.
 *
 * @param job the row, for the edits of its text; nothing where no key is chosen
 * @param label of the key, as the trade calls it
 * @param twelveLooksAt what 12 o'clock looks at
 * @param hours to be read, in turn
 * @param readings what the leaves said at each hour read; those of the hours still to be read are missing at the end
 * @param effect what the readings tell of the gap, and of what is noted after them, if they can be used
 * @param earlier pieces of the rounds before, without those taken out
 * @param pieces noted after the readings
 * @param doubtful hours whose readings do not go with the others
 * @param leaves thicknesses of the stock's feelers, finest first
 * @param films thicknesses of film in the row's set, thinnest first
 */
public record ClockState(Optional<KeyJob> job, String label, String twelveLooksAt, List<ClockHour> hours,
		List<LeafReading> readings, Optional<RoundEffect> effect, List<PartialShim> earlier,
		List<PartialShim> pieces, Set<ClockHour> doubtful, List<Length> leaves, List<Length> films) {

	public ClockState {
		hours = List.copyOf(hours);
		readings = List.copyOf(readings);
		earlier = List.copyOf(earlier);
		pieces = List.copyOf(pieces);
		doubtful = Set.copyOf(doubtful);
		leaves = List.copyOf(leaves);
		films = List.copyOf(films);
	}

	/** No key is chosen. */
	public static ClockState empty() {
		return new ClockState(Optional.empty(), "", "", List.of(), List.of(), Optional.empty(), List.of(), List.of(),
				Set.of(), List.of(), List.of());
	}

	/** The clock of a row. Reckons with its rounds: not for the window's thread. */
	public static ClockState of(KeyJob job) {
		Optional<Round> round = job.lastRound();
		Optional<RoundEffect> effect = round.flatMap(last -> RoundEffect.of(job, last));
		return new ClockState(Optional.of(job), job.key().map(key -> key.label()).orElse(job.name()),
				ClockWords.twelveLooksAt(job.plan().plan().getSystem()),
				round.map(job::hours).orElse(job.plan().plan().getHours()), readings(job, round),
				effect, earlier(job, round), round.map(PlacedPieces::of).orElse(List.of()),
				effect.map(known -> doubtful(known, job)).orElse(Set.of()),
				job.plan().feelers(),
				job.fitting().films().map(films -> FilmStore.of(films).thicknesses()).orElse(List.of()));
	}

	private static List<PartialShim> earlier(KeyJob job, Optional<Round> round) {
		List<PartialShim> earlier = new ArrayList<>(RowWork.earlierPieces(job));
		round.map(PlacedPieces::takenOut).stream().flatMap(List::stream).forEach(earlier::remove);
		return earlier;
	}

	/** Hours of the last round. */
	private static Set<ClockHour> doubtful(RoundEffect effect, KeyJob job) {
		int last = job.service().getRounds().size() - 1;
		return effect.felt().doubted().stream().filter(doubt -> doubt.round() == last)
				.map(doubt -> doubt.reading().hour()).collect(Collectors.toSet());
	}

	private static List<LeafReading> readings(KeyJob job, Optional<Round> round) {
		return round.map(last -> LeafReading.of(last).stream().limit(job.hours(last).size()).toList())
				.orElse(List.of());
	}

	/** The readings as they are drawn, boxes for those to come. */
	List<RimReading> marks(List<LeafReading> shown) {
		List<RimReading> marks = new ArrayList<>();
		for (int index = 0; index < hours.size(); index++) {
			ClockHour hour = hours.get(index);
			marks.add(index >= shown.size() ? RimReading.blank(hour) : mark(hour, shown.get(index)));
		}
		return marks;
	}

	private static RimReading mark(ClockHour hour, LeafReading reading) {
		return reading.slides().map(leaf -> RimReading.free(hour, Figures.shown(leaf)))
				.orElseGet(() -> reading.lightly() ? RimReading.lightDrag(hour) : RimReading.drag(hour));
	}

	/** The gap as it was felt. */
	public Optional<PadGap> felt() {
		return effect.map(RoundEffect::felt);
	}

	/** The gap with pieces, where they are those that are noted: others are not reckoned with while they are moved. */
	public Optional<PadGap> left(List<PartialShim> placed) {
		return effect.filter(known -> placed.equals(pieces)).flatMap(RoundEffect::after);
	}

	/** Whether a dash is a reading. */
	boolean isGraded() {
		return job.filter(row -> row.plan().plan().isGraded()).isPresent();
	}

	/** Widest gap that passes. */
	public Optional<Length> tolerance() {
		return job.map(row -> row.plan().tolerance());
	}
}
