package padwright.workup.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import padwright.engine.clock.ClockHour;
import padwright.engine.evidence.DoubtedReading;
import padwright.engine.evidence.FeltReading;
import padwright.engine.evidence.FeltRound;
import padwright.engine.length.Length;
import padwright.engine.seating.Limit;
import padwright.engine.seating.NextHour;
import padwright.engine.seating.SeatAnswer;
import padwright.engine.seating.WhyNothing;
import padwright.model.Resolved;
import padwright.model.keysystem.Coupling;
import padwright.model.keysystem.Key;
import padwright.model.systems.EffectiveKey;
import padwright.workup.service.KeyJob;
import padwright.workup.words.Chance;
import padwright.workup.words.GapWords;
import padwright.workup.words.LengthWords;
import padwright.workup.words.Messages;
import padwright.workup.words.PieceWords;
import padwright.workup.words.ShownUnit;

/** What brings a pad to its seat, how sure it is and what would make it surer, in words. */
public final class SeatWords {

	private final KeyJob job;
	private final LevelAnswer answer;
	private final SeatAnswer seat;

	private SeatWords(KeyJob job, LevelAnswer answer) {
		this.job = job;
		this.answer = answer;
		this.seat = answer.seat();
	}

	/** All there is to say, the most important first, each a sentence or two. */
	public static List<String> of(KeyJob job, LevelAnswer answer) {
		SeatWords words = new SeatWords(job, answer);
		return Stream.of(words.heldOff().stream(), words.chances(), words.doubted(), words.limit(), words.unread(),
				words.assumed()).flatMap(lines -> lines).toList();
	}

	/** What has to be put right before any film is laid, and which readings are to be felt again. */
	public static List<String> warnings(KeyJob job, LevelAnswer answer) {
		SeatWords words = new SeatWords(job, answer);
		return Stream.concat(words.heldOff().stream(), words.doubted()).toList();
	}

	/** How full shims are exchanged, why nothing is to be done, and what would make the answer surer. */
	public static List<String> hints(KeyJob job, LevelAnswer answer) {
		SeatWords words = new SeatWords(job, answer);
		return Stream.of(swap(answer).stream(), words.nothing().stream(), words.limit(), words.unread())
				.flatMap(lines -> lines).toList();
	}

	/** What is to be done; {@code none} for nothing. */
	public static String toDo(SeatAnswer seat) {
		List<String> parts = new ArrayList<>();
		if (seat.fullShims().signum() != 0) {
			parts.add(Messages.of("seat.full", signed(seat.fullShims())));
		}
		seat.takeOut().forEach(piece -> parts.add(Messages.of("seat.out", PieceWords.of(piece))));
		seat.place().forEach(piece -> parts.add(PieceWords.of(piece)));
		return parts.isEmpty() ? Messages.of("seat.none") : String.join(", ", parts);
	}

	/** With its sign, in the unit that is shown and without it. */
	public static String signed(Length change) {
		return (change.signum() > 0 ? "+" : "-") + LengthWords.figure(change.abs());
	}

	/** How the full shims are changed, where one is exchanged for others; nothing else. */
	public static Optional<String> swap(LevelAnswer answer) {
		FullShims.Swap swap = answer.swap();
		return swap.out().isEmpty() || swap.in().isEmpty() ? Optional.empty()
				: Optional.of(Messages.of("seat.swap", together(swap.in()), together(swap.out())));
	}

	private static String together(List<Length> films) {
		return films.stream().map(LengthWords::figure).collect(Collectors.joining(" + ")) + " " + ShownUnit.symbol();
	}

	private Optional<String> heldOff() {
		return seat.heldOff() ? Optional.of(couplings().isEmpty() ? Messages.of("seat.heldOff")
				: Messages.of("seat.heldOffBy", couplings())) : Optional.empty();
	}

	/** The couplings that can keep the key off its rim: those that it closes by, and those that close it. */
	private String couplings() {
		Stream<String> own = job.key().stream().flatMap(key -> key.closes().stream()).flatMap(SeatWords::driven)
				.map(driven -> pair(label(job.service().getKey()), label(driven)));
		Stream<String> others = job.plan().system().keys().stream().flatMap(driver -> driver.closes().stream()
				.flatMap(SeatWords::driven).filter(driven -> driven == job.service().getKey())
				.map(driven -> pair(driver.label(), label(driven))));
		return Stream.concat(own, others).collect(Collectors.joining(", "));
	}

	private static Stream<Key> driven(Coupling coupling) {
		return Resolved.of(coupling.getDriven()).stream();
	}

	private String label(Key key) {
		return job.plan().system().key(key).map(EffectiveKey::label).orElse(key.getName());
	}

	private static String pair(String driver, String driven) {
		return driver + " > " + driven;
	}

	private Stream<String> chances() {
		if (seat.heldOff()) {
			return Stream.empty();
		}
		ClockHour now = PadGap.widest(seat.gapNow());
		if (seat.nothing()) {
			return Stream.concat(Stream.of(
					Messages.of("seat.now", Chance.of(seat.chanceNow()), now, GapWords.range(seat.gapNow(), now))),
					nothing().stream());
		}
		ClockHour after = PadGap.widest(seat.gapAfter());
		return Stream.concat(
				Stream.of(Messages.of("seat.now", Chance.of(seat.chanceNow()), now, GapWords.range(seat.gapNow(), now)),
						Messages.of("seat.after", Chance.of(seat.chance()), after,
								GapWords.range(seat.gapAfter(), after))),
				swap(answer).stream());
	}

	private Optional<String> nothing() {
		return seat.whyNothing().filter(why -> why != WhyNothing.HELD_OFF)
				.map(why -> Messages.of("seat.nothing." + name(why), Chance.of(answer.problem().prices().bar())));
	}

	private static String name(Enum<?> word) {
		return word.name();
	}

	/** Of a key that is held off no reading tells how its rim goes. */
	private Stream<String> doubted() {
		return seat.heldOff() ? Stream.empty() : seat.doubted().stream().map(SeatWords::doubted);
	}

	/** Which reading is to be felt again. */
	public static String doubted(DoubtedReading doubt) {
		FeltReading felt = doubt.reading();
		return felt.drags() ? Messages.of("seat.doubtedDrag", felt.hour(), doubt.round() + 1)
				: Messages.of("seat.doubted", LengthWords.withUnit(felt.above()), felt.hour(), doubt.round() + 1);
	}

	private Stream<String> limit() {
		Stream<String> limit = seat.limit() == Limit.NONE || seat.heldOff() ? Stream.empty()
				: Stream.of(Messages.of("seat.limit." + name(seat.limit())));
		return Stream.concat(limit, seat.next().stream().map(this::next));
	}

	private String next(NextHour next) {
		return everyHourDrags() ? Messages.of("seat.makeSure", next.hour(), Chance.of(next.open()))
				: Messages.of("seat.next", next.hour(), Chance.of(next.gain()));
	}

	private boolean everyHourDrags() {
		List<FeltRound> rounds = answer.problem().rounds();
		return rounds.get(rounds.size() - 1).readings().stream().allMatch(FeltReading::drags);
	}

	private Stream<String> unread() {
		return seat.unread().stream().map(arc -> Messages.of("seat.unread", arc.from(), arc.to()));
	}

	private Stream<String> assumed() {
		List<String> assumed = new ArrayList<>();
		if (answer.pad().assumedStiffness()) {
			assumed.add(Messages.of("seat.assumed.stiffness", answer.pad().model().stiffness().lambda()));
		}
		if (answer.pad().assumedArm()) {
			assumed.add(Messages.of("seat.assumed.arm"));
		}
		if (answer.pad().assumedHinge()) {
			assumed.add(Messages.of("seat.assumed.hinge"));
		}
		return assumed.stream();
	}
}
