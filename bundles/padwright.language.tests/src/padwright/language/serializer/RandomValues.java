package padwright.language.serializer;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.LengthUnit;
import padwright.model.FeelerReading;
import padwright.model.Measure;
import padwright.model.Range;
import padwright.model.SignedMeasure;
import padwright.model.keysystem.KeySystemPackage;
import padwright.model.stock.StockPackage;

/** Values for the attributes of a model, as chance will have it; no name is given twice. */
final class RandomValues {

	private static final List<EAttribute> SIGNED = List.of(StockPackage.Literals.CLIMATE__TEMPERATURE,
			StockPackage.Literals.NUMBER_VALUE__NUMBER, KeySystemPackage.Literals.PLACED__AROUND,
			KeySystemPackage.Literals.ROD_FEATURES__AROUND, KeySystemPackage.Literals.FINGERING__CENTS,
			KeySystemPackage.Literals.NOTE_REMOVAL__CENTS, KeySystemPackage.Literals.KEY_SYSTEM__TRANSPOSITION,
			KeySystemPackage.Literals.KEY_SYSTEM__TEMPERATURE);
	private static final List<String> RULE_UNITS = Stream.concat(LengthUnit.symbols().stream(),
			Stream.of("°C", "%RH", "years", "grams")).toList();
	private static final List<String> PROPERTIES = List.of("shim.material", "pad", "pad.thick", "my_own.thing", "found",
			"key.joint", "bench.humidity");
	private static final List<String> TEXTS = List.of("", "low C♯", "with \"marks\"", "back\\slash", "tab\tand\nline",
			"für é €", "// no remark", "}");

	private final Random random;
	private final Deque<String> names = new ArrayDeque<>(List.of("Fs", "film", "key", "C♯", "open", "T", "L1", "unit",
			"B♭", "felt", "_x", "system", "pad", "none", "Öl", "stock", "shim", "to", "at", "nothing"));
	private int named;

	RandomValues(Random random) {
		this.random = random;
	}

	Object of(EObject owner, EAttribute attribute) {
		Class<?> type = attribute.getEAttributeType().getInstanceClass();
		if (attribute.getEAttributeType() instanceof EEnum literals) {
			return literals.getELiterals().get(random.nextInt(literals.getELiterals().size())).getInstance();
		} else if (type == String.class) {
			return text(owner, attribute);
		} else if (type == BigDecimal.class) {
			return SIGNED.contains(attribute) && random.nextBoolean() ? number().negate() : number();
		} else if (type == boolean.class) {
			return true;
		} else if (type == int.class) {
			return random.nextInt(100);
		} else if (type == LengthUnit.class) {
			return unit();
		} else if (type == Measure.class) {
			return measure();
		} else if (type == SignedMeasure.class) {
			return new SignedMeasure(random.nextBoolean(), measure());
		} else if (type == Range.class) {
			return random.nextBoolean() ? Range.of(number()) : new Range(number(), number());
		} else if (type == ClockHour.class) {
			return new ClockHour(random.nextInt(ClockHour.STATIONS));
		} else if (type == FeelerReading.class) {
			return switch (random.nextInt(3)) {
				case 0 -> FeelerReading.DRAGS;
				case 1 -> FeelerReading.DRAGS_LIGHTLY;
				default -> FeelerReading.free(number());
			};
		} else if (type == LocalDate.class) {
			return LocalDate.of(1000 + random.nextInt(9000), 1 + random.nextInt(12), 1 + random.nextInt(28));
		}
		throw new AssertionError("no values of " + type + " for " + attribute.getName());
	}

	private String text(EObject owner, EAttribute attribute) {
		boolean isText = owner.eClass().getName().equals("Player");
		return switch (attribute.getName()) {
		case "name" -> isText ? oneOf(TEXTS) : name(owner);
		case "finger", "note", "hazards" -> name();
		case "property" -> oneOf(PROPERTIES);
		case "unit" -> oneOf(RULE_UNITS);
		default -> oneOf(TEXTS);
		};
	}

	private String name() {
		return !names.isEmpty() && random.nextInt(3) == 0 ? names.removeFirst() : "n" + named++;
	}

	/** In a key system it may be of several words. */
	private String name(EObject owner) {
		boolean several = owner.eClass().getEPackage() == KeySystemPackage.eINSTANCE && random.nextInt(4) == 0;
		return several ? "low n" + named++ : name();
	}

	private String oneOf(List<String> choices) {
		return choices.get(random.nextInt(choices.size()));
	}

	private LengthUnit unit() {
		return LengthUnit.values()[random.nextInt(LengthUnit.values().length)];
	}

	private Measure measure() {
		return new Measure(number(), random.nextBoolean() ? unit() : null);
	}

	private BigDecimal number() {
		return BigDecimal.valueOf(random.nextInt(100_000), random.nextInt(5));
	}
}
