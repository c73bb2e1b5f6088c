package padwright.workup.rules;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** All properties that rules can ask about. */
final class RuleProperties {

	private static final Map<String, RuleProperty> BY_NAME = new LinkedHashMap<>();

	static {
		Stream.of(FittingProperties.all(), KeyProperties.all(), PlanProperties.all()).flatMap(List::stream)
				.forEach(property -> BY_NAME.put(property.name(), property));
	}

	private RuleProperties() {
	}

	static Optional<RuleProperty> byName(String name) {
		return Optional.ofNullable(BY_NAME.get(name));
	}

	static Collection<RuleProperty> all() {
		return BY_NAME.values();
	}
}
