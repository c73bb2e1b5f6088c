package padwright.engine.acoustics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What a raised pad does to a note by hanging over its hole: how much flatter and weaker it is than with the pad out of the
 * way. Immutable; of one thread while it is asked.
 */
public final class Venting {

	/** Less than any ear hears of a pitch, in cents. */
	public static final double CENTS = 1;
	/** And of a strength, in dB. */
	public static final double DECIBELS = 0.5;

	/** As good as out of the way, in m. */
	private static final double AWAY = 1;
	private static final double LEAST = 5e-5;
	private static final double MOST = 0.02;
	/** To which the rise that is enough is found, in m. */
	private static final double FINE = 1e-5;

	private final String hole;
	private final Resonating column;
	private final Resonating.Shift away;

	private Venting(String hole, Resonating column, Resonating.Shift away) {
		this.hole = hole;
		this.column = column;
		this.away = away;
	}

	/**
	 * What one rise does.
	 *
	 * @param cents above the pad out of the way: below 0 as a rule
	 * @param decibels over the pad out of the way: below 0 as a rule
	 */
	public record Effect(double cents, double decibels) {

		/** Whether neither is heard. */
		public boolean isNothing() {
			return Math.abs(cents) <= CENTS && Math.abs(decibels) <= DECIBELS;
		}
	}

	/** Every note that is sounded with the hole open under its pad, in the order of the notes. */
	public static List<Venting> of(Instrument instrument, List<NoteSound> sounds, String hole) {
		List<Venting> ventings = new ArrayList<>();
		boolean isPadded = instrument.layout().holes().stream()
				.anyMatch(each -> each.name().equals(hole) && each.cup().isPresent());
		sounds.stream().filter(sound -> isPadded && sound.note().fingering().over(hole) instanceof Cover.Free)
				.forEach(sound -> sound.played().ifPresent(played -> {
					Resonating column = new Resonating(instrument, sound.note(), played);
					column.settled(hole, new Cover.Risen(AWAY))
							.ifPresent(away -> ventings.add(new Venting(hole, column, away)));
				}));
		return ventings;
	}

	public TargetNote note() {
		return column.note();
	}

	/**
	 * With the pad so far up.
	 *
	 * @param rise in m, more than 0
	 * @return nothing where the note has no resonance then
	 */
	public Optional<Effect> at(double rise) {
		return column.settled(hole, new Cover.Risen(rise))
				.map(shift -> new Effect(shift.cents() - away.cents(), shift.decibels() - away.decibels()));
	}

	/** The least rise in m from which on nothing is heard of the pad in any note; nothing where it is heard at 20 mm. */
	public static Optional<Double> enough(List<Venting> notes) {
		return least(notes, Effect::isNothing);
	}

	/** The least rise in m at which every note is as it should be, if more is better; nothing where 20 mm do not do. */
	public static Optional<Double> least(List<Venting> notes, Predicate<Effect> good) {
		if (!isGood(notes, MOST, good)) {
			return Optional.empty();
		}
		double low = LEAST;
		double high = MOST;
		while (high - low > FINE) {
			double middle = (low + high) / 2;
			if (isGood(notes, middle, good)) {
				high = middle;
			} else {
				low = middle;
			}
		}
		return Optional.of(high);
	}

	private static boolean isGood(List<Venting> notes, double rise, Predicate<Effect> good) {
		return notes.stream().allMatch(note -> note.at(rise).filter(good).isPresent());
	}
}
