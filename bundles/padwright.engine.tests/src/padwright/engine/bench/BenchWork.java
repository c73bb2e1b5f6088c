package padwright.engine.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import padwright.engine.bench.Adviser.Advice;
import padwright.engine.clock.ClockHour;
import padwright.engine.closing.Hinge;
import padwright.engine.evidence.FeltReading;
import padwright.engine.evidence.FeltRound;
import padwright.engine.evidence.FilmInPlace;
import padwright.engine.evidence.PadModel;
import padwright.engine.evidence.RimPrior;
import padwright.engine.film.FilmSupply;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.engine.seating.NextHour;
import padwright.engine.seating.Prices;
import padwright.engine.seating.SeatAnswer;
import padwright.engine.seating.SeatProblem;
import padwright.engine.seating.Seating;

/** One pad worked on until every hour drags, or the bench gives up. Changes; for one thread. */
public final class BenchWork {

	static final Length SEAT = Length.thou("0.5");
	static final int MOST_ROUNDS = 8;
	/** Further hours that are felt in a round in which one slid, where the answer asks for them; else as long as it asks. */
	private static final int MOST_ASKED = 4;
	private static final List<FilmSupply> FILMS = Stream.of("0.5", "1", "1.5", "2", "2.5", "3", "4", "7.5")
			.map(Length::thou).map(FilmSupply::unlimited).toList();
	/** What a shop with half-thou film offers. */
	private static final List<Length> FULL_SHIM_STEPS = Stream.of("0.5", "1", "1.5", "2").map(Length::thou)
			.flatMap(step -> Stream.of(step, step.negated())).toList();
	private static final Length FINE = Length.thou("0.05");

	private final Instrument instrument;
	private final int hours;
	private final Method method;
	private final Adviser adviser;
	private final SimulatedPad pad;
	private final Hand hand;
	private final List<FeltRound> rounds = new ArrayList<>();
	private final List<PartialShim> pieces = new ArrayList<>();
	private final List<Told> told = new ArrayList<>();
	private Length fullShims = Length.ZERO;
	private int placed;
	private int readings;

	/**
	 * What an answer told, and what came of it.
	 *
	 * @param chance that was told: of being level after something was done, or in the end as it is
	 * @param level whether it was level then
	 * @param noneUnexplained whether nothing was to be done, without a reason, while a leaf as thick as the seat slid
	 */
	public record Told(double chance, boolean level, boolean noneUnexplained) {
	}

	/**
	 * How a pad went.
	 *
	 * @param rounds of film after which every hour dragged; empty if never
	 * @param readings hours that were felt in all
	 * @param pieces placed in all
	 * @param level whether it was truly level in the end
	 * @param nearlyLevel whether it was to within a tenth of a thou, the scatter of the hand
	 */
	public record Played(Optional<Integer> rounds, int readings, int pieces, boolean level, boolean nearlyLevel,
			List<Told> told) {
	}

	private BenchWork(long number, Instrument instrument, int hours, boolean graded, Method method, Adviser adviser) {
		this.instrument = instrument;
		this.hours = hours;
		this.method = method;
		this.adviser = adviser == null ? this::solve : adviser;
		pad = new SimulatedPad(number, instrument);
		hand = new Hand(pad, graded);
	}

	/** Plays one pad. */
	public static Played play(long number, Instrument instrument, int hours, boolean graded, Method method) {
		return new BenchWork(number, instrument, hours, graded, method, null).play();
	}

	/** Plays one pad by somebody's advice. */
	public static Played play(long number, Instrument instrument, int hours, boolean graded, Adviser adviser) {
		return new BenchWork(number, instrument, hours, graded, Method.ANSWERED, adviser).play();
	}

	private Played play() {
		for (int round = 0; round < MOST_ROUNDS; round++) {
			List<FeltReading> felt = new ArrayList<>(feel(hoursOf(round)));
			Optional<Advice> advice = method == Method.ANSWERED ? Optional.of(askOn(felt)) : Optional.empty();
			if (allDrag(felt)) {
				advice.ifPresent(said -> told.add(new Told(said.chanceNow(), isWithin(SEAT), false)));
				return played(Optional.of(round));
			}
			if (method == Method.RULE_OF_THUMB) {
				ruleOfThumb(felt).ifPresent(this::place);
			} else {
				rounds.add(roundOf(method == Method.RIM_KNOWN ? known() : felt));
				act(advice.orElseGet(() -> adviser.advise(rounds)), felt);
			}
		}
		return played(Optional.empty());
	}

	/** Feels the further hours that are asked for, and adds them. */
	private Advice askOn(List<FeltReading> felt) {
		for (int asked = 0;; asked++) {
			List<FeltRound> all = new ArrayList<>(rounds);
			all.add(roundOf(felt));
			Advice advice = adviser.advise(all);
			if (advice.next().isEmpty() || asked >= MOST_ASKED && !allDrag(felt)) {
				return advice;
			}
			felt.addAll(feel(List.of(advice.next().get())));
			felt.sort(Comparator.comparing(FeltReading::hour));
		}
	}

	private List<FeltReading> feel(List<ClockHour> at) {
		readings += at.size();
		return hand.feel(at);
	}

	private static boolean allDrag(List<FeltReading> felt) {
		return felt.stream().allMatch(FeltReading::drags);
	}

	private FeltRound roundOf(List<FeltReading> felt) {
		return new FeltRound(felt, new FilmInPlace(pieces, fullShims));
	}

	private Played played(Optional<Integer> after) {
		return new Played(after, readings, placed, isWithin(SEAT), isWithin(SEAT.plus(Length.thou("0.1"))), told);
	}

	private boolean isWithin(Length width) {
		return pad.widestGap() <= width.nanometres();
	}

	/** Evenly around the clock; turned from round to round as far as half hours allow. */
	private List<ClockHour> hoursOf(int round) {
		int apart = ClockHour.STATIONS / hours;
		int turn = method != Method.ANSWERED ? 0 : hours == 8 ? round % 3 : round % 2 * (apart / 2);
		return IntStream.range(0, hours).mapToObj(hour -> new ClockHour((hour * apart + turn) % ClockHour.STATIONS))
				.toList();
	}

	private List<FeltReading> known() {
		return IntStream.range(0, ClockHour.STATIONS).mapToObj(station -> {
			Length gap = new Length(Math.round(pad.gapAt(station / 2.0)));
			Length above = gap.isLongerThan(FINE) ? gap.minus(FINE) : Length.ZERO;
			return new FeltReading(new ClockHour(station), above, Optional.of(gap.plus(FINE)), true);
		}).toList();
	}

	private void act(Advice advice, List<FeltReading> felt) {
		advice.takeOut().forEach(piece -> {
			pieces.remove(piece);
			pad.takeOut(piece);
		});
		advice.place().forEach(this::place);
		pad.addFullShims(advice.fullShims());
		fullShims = fullShims.plus(advice.fullShims());
		if (!advice.heldOff()) {
			told.add(new Told(advice.chance(), isWithin(SEAT), isUnexplained(advice, felt)));
		}
	}

	private static boolean isUnexplained(Advice advice, List<FeltReading> felt) {
		boolean slides = felt.stream().anyMatch(reading -> !reading.drags() && !reading.above().isShorterThan(SEAT));
		return slides && advice.isNothing() && advice.chanceNow() < Prices.USUAL.bar();
	}

	private Advice solve(List<FeltRound> felt) {
		SeatAnswer answer = Seating.solve(new SeatProblem(believed(), felt, felt.get(felt.size() - 1).film(), FILMS,
				FULL_SHIM_STEPS, SEAT, Prices.USUAL));
		return new Advice(answer.place(), answer.takeOut(), answer.fullShims(), answer.heldOff(), answer.chanceNow(),
				answer.chance(), answer.next().map(NextHour::hour));
	}

	private PadModel believed() {
		Length feel = method == Method.RIM_KNOWN ? FINE : PadModel.USUAL_FEEL;
		return new PadModel(RimPrior.of(instrument.condition()),
				new Hinge(new ClockHour(0), SimulatedPad.BELIEVED_REACH), PadModel.REACH_ASSUMED,
				instrument.stiffness(), PadModel.STIFFNESS_ASSUMED, feel);
	}

	private void place(PartialShim piece) {
		pieces.add(piece);
		pad.place(piece);
		placed++;
	}

	private Optional<PartialShim> ruleOfThumb(List<FeltReading> felt) {
		return new RuleOfThumb(felt).piece();
	}
}
