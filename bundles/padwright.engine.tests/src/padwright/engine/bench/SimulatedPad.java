package padwright.engine.bench;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import java.util.Random;

import padwright.engine.clock.ClockHour;
import padwright.engine.evidence.RimPrior;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.engine.levelling.Stiffness;

/**
 * The truth under one pad, at 240 places around the clock, in nm. Its stiffness and the arm of its key are off by a third
 * from what is believed. Changes; for one thread.
 */
public final class SimulatedPad {

	/** Rim radius over arm that is believed: 7 mm over 12 mm. */
	public static final double BELIEVED_REACH = 7 / 12.0;
	private static final int PLACES = 240;
	private static final int PLACES_A_STATION = PLACES / ClockHour.STATIONS;
	private static final double OFF = 1 / 3.0;
	/** By how much rims are wider than believed, and how much that scatters. */
	private static final double WIDER = 1.15;
	private static final double WIDER_SPREAD = 0.2;
	private static final int HIGHEST_WAVE = 10;
	/** How a piece is placed: in hours, and as a share of its thickness. */
	private static final double MISPLACED = 0.1;
	private static final double MISCUT = 0.012;

	private final Random random;
	private final double[] clearance = new double[PLACES];
	private final double reach;
	private final Stiffness stiffness;
	/** Two pieces may be alike. */
	private final Map<PartialShim, Deque<double[]>> placed = new HashMap<>();

	/** The pad of a number: the same every time. */
	public SimulatedPad(long number, Instrument instrument) {
		random = new Random(number * 7919 + 13);
		RimPrior prior = RimPrior.of(instrument.condition());
		double scale = WIDER * Math.exp(WIDER_SPREAD * random.nextGaussian());
		for (int wave = 1; wave <= HIGHEST_WAVE; wave++) {
			double deviation = scale * deviation(prior, wave);
			addWave(wave, deviation * random.nextGaussian(), deviation * random.nextGaussian());
		}
		reach = BELIEVED_REACH / offByAThird();
		stiffness = new Stiffness(instrument.stiffness().lambda() * offByAThird());
	}

	/** Above what is believed, waves fall off with their number. */
	private static double deviation(RimPrior prior, int wave) {
		int highest = prior.deviations().size();
		double believed = prior.deviations().get(Math.min(wave, highest) - 1).nanometres();
		return wave <= highest ? believed : believed * 0.6 * highest / wave;
	}

	private double offByAThird() {
		return 1 + (random.nextBoolean() ? OFF : -OFF);
	}

	private void addWave(int wave, double cosine, double sine) {
		for (int place = 0; place < PLACES; place++) {
			double angle = wave * angle(place);
			clearance[place] += cosine * Math.cos(angle) + sine * Math.sin(angle);
		}
	}

	private static double angle(double place) {
		return 2 * Math.PI * place / PLACES;
	}

	/** Full shims made thicker by so much. */
	public void addFullShims(Length by) {
		for (int place = 0; place < PLACES; place++) {
			clearance[place] -= by.nanometres();
		}
	}

	/** Places a piece, a little off. */
	public void place(PartialShim piece) {
		double from = piece.arc().from().station() / 2.0 + MISPLACED * random.nextGaussian();
		double thickness = piece.thickness().nanometres() * (1 + MISCUT * random.nextGaussian());
		double[] lift = lift(from, piece.arc().halfHours() / 2.0, thickness);
		placed.computeIfAbsent(piece, alike -> new ArrayDeque<>()).push(lift);
		add(lift, -1);
	}

	public void takeOut(PartialShim piece) {
		add(placed.get(piece).pop(), 1);
	}

	private void add(double[] lift, int sign) {
		for (int place = 0; place < PLACES; place++) {
			clearance[place] += sign * lift[place];
		}
	}

	/** As {@link padwright.engine.levelling.Lift}, from the series itself. */
	private double[] lift(double from, double hours, double thickness) {
		double half = hours * Math.PI / 12;
		double middle = (from + hours / 2) * Math.PI / 6;
		double[] lift = new double[PLACES];
		for (int place = 0; place < PLACES; place++) {
			lift[place] = hours / 12;
			for (int wave = 1; wave <= Stiffness.HIGHEST_HARMONIC; wave++) {
				lift[place] += stiffness.transmission(wave) * 2 * Math.sin(wave * half) / (wave * Math.PI)
						* Math.cos(wave * (angle(place) - middle));
			}
			lift[place] *= thickness;
		}
		return lift;
	}

	/** The gap when lightly closed, by place. */
	private double[] gap() {
		double turn = Double.POSITIVE_INFINITY;
		for (int place = 0; place < PLACES; place++) {
			turn = Math.min(turn, clearance[place] / weight(place));
		}
		double[] gap = new double[PLACES];
		for (int place = 0; place < PLACES; place++) {
			gap[place] = clearance[place] - turn * weight(place);
		}
		return gap;
	}

	private double weight(int place) {
		return 1 - reach * Math.cos(angle(place));
	}

	/** The widest gap at the 24 stations when lightly closed. */
	public double widestGap() {
		double[] gap = gap();
		double widest = 0;
		for (int station = 0; station < ClockHour.STATIONS; station++) {
			widest = Math.max(widest, gap[station * PLACES_A_STATION]);
		}
		return widest;
	}

	/** The gap at an hour, also between the stations. */
	public double gapAt(double hour) {
		double place = (hour / 12 * PLACES % PLACES + PLACES) % PLACES;
		int before = (int) place;
		double part = place - before;
		double[] gap = gap();
		return gap[before] * (1 - part) + gap[(before + 1) % PLACES] * part;
	}

	/** What is drawn by chance at this pad. */
	Random random() {
		return random;
	}
}
