package padwright.workup.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import padwright.engine.length.Length;
import padwright.model.Lengths;
import padwright.model.plan.Round;
import padwright.workup.service.KeyJob;

/**
 * The full shims under a pad, and how a change of their sum is made from film.
 *
 * @param shims in the order in which they were laid
 */
public record FullShims(List<Length> shims) {

	/**
	 * What a change of the sum takes.
	 *
	 * @param out the shims that come out
	 * @param in the film that goes in
	 */
	public record Swap(List<Length> out, List<Length> in) {

		public Swap {
			out = List.copyOf(out);
			in = List.copyOf(in);
		}
	}

	public FullShims {
		shims = List.copyOf(shims);
	}

	/** By what the full shims were changed after the readings of a round; nothing where the round does not say. */
	public static Length change(Round round) {
		return Lengths.of(round.getFull(), round).orElse(Length.ZERO);
	}

	/** The full shims of a row when it was last felt; those that {@code solved} says where it notes none. */
	static FullShims atLastRound(KeyJob job, List<Length> solved) {
		FullShims full = new FullShims(job.stack().isEmpty() ? solved : job.stack());
		List<Round> rounds = job.service().getRounds();
		for (Round round : rounds.subList(0, Math.max(0, rounds.size() - 1))) {
			full = full.after(round, FilmStore.thicknesses(job));
		}
		return full;
	}

	/** The full shims of a row after all its changes; those that no film makes are left out. */
	public static FullShims now(KeyJob job) {
		FullShims full = new FullShims(job.stack());
		for (Round round : job.service().getRounds()) {
			full = full.after(round, FilmStore.thicknesses(job));
		}
		return full;
	}

	public Length sum() {
		return shims.stream().reduce(Length.ZERO, Length::plus);
	}

	/** With the change after the readings of a round, where film makes it. */
	public FullShims after(Round round, List<Length> films) {
		return swap(change(round), films).map(this::after).orElse(this);
	}

	/** With the shims of a swap in place. */
	public FullShims after(Swap swap) {
		List<Length> left = new ArrayList<>(shims);
		swap.out().forEach(left::remove);
		left.addAll(swap.in());
		return new FullShims(left);
	}

	/**
	 * How the sum is changed with the fewest pieces handled: one film more, one shim less, or one shim for one or two others,
	 * the thinnest shim that does. Nothing where no film makes the change.
	 *
	 * @param films the thicknesses there are, thinnest first
	 */
	public Optional<Swap> swap(Length change, List<Length> films) {
		if (change.signum() == 0) {
			return Optional.of(new Swap(List.of(), List.of()));
		}
		if (change.signum() > 0 && films.contains(change)) {
			return Optional.of(new Swap(List.of(), List.of(change)));
		}
		if (change.signum() < 0 && shims.contains(change.abs())) {
			return Optional.of(new Swap(List.of(change.abs()), List.of()));
		}
		return exchanges(change, films).min(Comparator.comparing(swap -> swap.in().size()));
	}

	private Stream<Swap> exchanges(Length change, List<Length> films) {
		return shims.stream().sorted().distinct().flatMap(shim -> made(shim.plus(change), films).stream()
				.map(in -> new Swap(List.of(shim), in)));
	}

	private static Optional<List<Length>> made(Length sum, List<Length> films) {
		if (films.contains(sum)) {
			return Optional.of(List.of(sum));
		}
		return films.stream().filter(film -> films.contains(sum.minus(film))).findFirst()
				.map(film -> List.of(sum.minus(film), film));
	}
}
