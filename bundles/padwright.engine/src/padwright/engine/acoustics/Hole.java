package padwright.engine.acoustics;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import padwright.engine.length.Length;

/**
 * A tone hole.
 *
 * @param name unlike the others'
 * @param place of its centre along the bore in m
 * @param diameter inside its rim in m, more than 0
 * @param chimney its height from the bore to the rim in m, 0 or more
 * @param rim width of the rim in m, more than 0
 * @param cup what closes it, if not a finger alone
 */
public record Hole(String name, double place, double diameter, double chimney, double rim, Optional<Cup> cup)
		implements Measured<Hole> {

	/** @throws IllegalArgumentException if a size is out of range, or the opening of the cup wider than the hole */
	public Hole {
		Sizes.requireBetween("place of hole " + name, place, -100, 100);
		Sizes.requirePositive("diameter of hole " + name, diameter);
		Sizes.requireBetween("chimney of hole " + name, chimney, 0, 1);
		Sizes.requirePositive("rim of hole " + name, rim);
		if (cup.filter(over -> over.opening() > diameter).isPresent()) {
			throw new IllegalArgumentException("the opening in the pad over hole " + name + " is wider than the hole");
		}
	}

	/** Closed by a finger alone. */
	public static Hole of(String name, Length place, Length diameter, Length chimney, Length rim) {
		return new Hole(name, Sizes.metres(place), Sizes.metres(diameter), Sizes.metres(chimney), Sizes.metres(rim),
				Optional.empty());
	}

	public Hole under(Cup over) {
		return new Hole(name, place, diameter, chimney, rim, Optional.of(over));
	}

	@Override
	public List<Measure> measures() {
		Set<Measure> measures = EnumSet.range(Measure.PLACE, Measure.RIM);
		if (cup.isPresent()) {
			measures.addAll(EnumSet.range(Measure.CUP, cup.get().isPerforated() ? Measure.DEPTH : Measure.RISE));
		}
		return List.copyOf(measures);
	}

	@Override
	public double size(Measure measure) {
		return switch (measure) {
			case PLACE -> place;
			case DIAMETER -> diameter;
			case CHIMNEY -> chimney;
			case RIM -> rim;
			case CUP -> cupFor(measure).diameter();
			case RISE -> cupFor(measure).rise();
			case OPENING -> cupFor(measure).opening();
			case DEPTH -> cupFor(measure).depth();
		};
	}

	@Override
	public Hole with(Measure measure, double size) {
		return switch (measure) {
			case PLACE -> new Hole(name, size, diameter, chimney, rim, cup);
			case DIAMETER -> new Hole(name, place, size, chimney, rim, cup);
			case CHIMNEY -> new Hole(name, place, diameter, size, rim, cup);
			case RIM -> new Hole(name, place, diameter, chimney, size, cup);
			default -> under(cupFor(measure).with(measure, size));
		};
	}

	private Cup cupFor(Measure measure) {
		return cup.orElseThrow(() -> Measured.noSuch(measure));
	}
}
