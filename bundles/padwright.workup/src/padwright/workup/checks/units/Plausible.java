package padwright.workup.checks.units;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.model.Lengths;
import padwright.workup.words.Phrase;

/**
 * The lengths that a thing on a flute can have: wide enough for every instrument from the piccolo to the bass, narrow
 * enough to tell a thou from a millimetre (bounds are ours, no source).
 *
 * @param what the thing, by the end of the key of its name
 */
record Plausible(String what, Length least, Length most) {

	static Plausible millimetres(String what, String least, String most) {
		return new Plausible(what, Length.millimetres(least), Length.millimetres(most));
	}

	static Plausible thou(String what, String least, String most) {
		return new Plausible(what, Length.thou(least), Length.thou(most));
	}

	boolean holds(Length length) {
		return !length.isShorterThan(least) && !length.isLongerThan(most);
	}

	/** The units in which {@code number} would be plausible. */
	List<LengthUnit> unitsFor(BigDecimal number) {
		return Arrays.stream(LengthUnit.values()).filter(unit -> inUnit(number, unit).isPresent()).toList();
	}

	private Optional<Length> inUnit(BigDecimal number, LengthUnit unit) {
		return Lengths.exact(number, unit).filter(this::holds);
	}

	/** The thing, as it stands behind "is not". */
	Phrase name() {
		return Phrase.of("plausible." + what);
	}

	/** The plausible lengths, in the unit that suits them. */
	Phrase why() {
		LengthUnit unit = most.isLongerThan(Length.millimetres("2")) ? LengthUnit.MILLIMETRE : LengthUnit.THOU;
		return Phrase.of("unit-suspect.why", least.in(unit, 3).toPlainString(), most.in(unit, 3).toPlainString(),
				unit.symbol());
	}
}
