package padwright.views.clock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.engine.clock.Arc;
import padwright.engine.clock.ClockHour;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;

/** Changes of pieces as they are made with the mouse or the arrows. What is not possible changes nothing. */
final class Arcs {

	/** A new piece covers two hours. */
	private static final int NEW_HALF_HOURS = 4;

	private Arcs() {
	}

	/** The end of an arc that is moved. */
	enum End {
		FROM, TO
	}

	/** The pieces with one end of one of them at another hour. */
	static List<PartialShim> moved(List<PartialShim> pieces, int index, End end, ClockHour hour) {
		Arc old = pieces.get(index).arc();
		ClockHour from = end == End.FROM ? hour : old.from();
		ClockHour to = end == End.TO ? hour : old.to();
		return from.equals(to) ? pieces
				: replaced(pieces, index, new PartialShim(Arc.between(from, to), pieces.get(index).thickness()));
	}

	/** The pieces with one end of one of them so many half hours further clockwise. */
	static List<PartialShim> shifted(List<PartialShim> pieces, int index, End end, int halfHours) {
		Arc old = pieces.get(index).arc();
		return moved(pieces, index, end, (end == End.FROM ? old.from() : old.to()).plusHalfHours(halfHours));
	}

	/** The pieces with one of them of the next thicker (or thinner, for a step of −1) film there is. */
	static List<PartialShim> thicker(List<PartialShim> pieces, int index, int step, List<Length> films) {
		PartialShim old = pieces.get(index);
		Optional<Length> next = step > 0
				? films.stream().filter(old.thickness()::isShorterThan).findFirst()
				: films.stream().filter(old.thickness()::isLongerThan).reduce((thinner, thick) -> thick);
		return next.map(film -> replaced(pieces, index, new PartialShim(old.arc(), film))).orElse(pieces);
	}

	static List<PartialShim> without(List<PartialShim> pieces, int index) {
		List<PartialShim> rest = new ArrayList<>(pieces);
		rest.remove(index);
		return List.copyOf(rest);
	}

	/** The pieces and one more of the thinnest film, where the gap left is widest; at 12 o'clock if none is known. */
	static List<PartialShim> withAnother(List<PartialShim> pieces, List<Length> films, Optional<ClockHour> widest) {
		Optional<Length> thinnest = films.stream().filter(film -> film.signum() > 0).findFirst();
		ClockHour middle = widest.orElse(new ClockHour(0));
		return thinnest.map(film -> {
			List<PartialShim> more = new ArrayList<>(pieces);
			more.add(new PartialShim(new Arc(middle.plusHalfHours(-NEW_HALF_HOURS / 2), NEW_HALF_HOURS), film));
			return List.copyOf(more);
		}).orElse(pieces);
	}

	private static List<PartialShim> replaced(List<PartialShim> pieces, int index, PartialShim piece) {
		List<PartialShim> changed = new ArrayList<>(pieces);
		changed.set(index, piece);
		return List.copyOf(changed);
	}
}
