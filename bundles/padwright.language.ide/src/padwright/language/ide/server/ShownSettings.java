package padwright.language.ide.server;

import java.util.Optional;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;

import padwright.engine.length.LengthUnit;
import padwright.workup.words.ShownUnit;

/** What an editor's user wants shown: {@code {"padwright": {"unit": "mm"}}}. */
final class ShownSettings {

	private static final String SECTION = "padwright";
	private static final String UNIT = "unit";

	private ShownSettings() {
	}

	/** Takes over what is said of units; what cannot be read leaves all as it is. */
	static void apply(Object settings) {
		member(settings, SECTION).flatMap(section -> member(section, UNIT)).filter(JsonElement::isJsonPrimitive)
				.flatMap(unit -> LengthUnit.bySymbol(unit.getAsString())).ifPresent(ShownUnit::choose);
	}

	private static Optional<JsonElement> member(Object from, String name) {
		return from instanceof JsonObject object ? Optional.ofNullable(object.get(name)) : Optional.empty();
	}
}
