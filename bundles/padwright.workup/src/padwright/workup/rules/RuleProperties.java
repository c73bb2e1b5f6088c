package padwright.workup.rules;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import padwright.workup.extensions.Added;
import padwright.workup.extensions.Extensions;

/** All properties that rules can ask about. */
final class RuleProperties {

	private static final Map<String, RuleProperty> BY_NAME = new LinkedHashMap<>();

	static {
		Stream.of(FittingProperties.all(), KeyProperties.all(), PlanProperties.all()).flatMap(List::stream)
				.forEach(property -> BY_NAME.put(property.name(), property));
		Extensions.installed().of(PropertyExtension.class).stream().flatMap(RuleProperties::added)
				.forEach(property -> BY_NAME.putIfAbsent(property.name(), property));
	}

	/** Each value is asked of the extension as any of its code is. */
	private static Stream<RuleProperty> added(Added<PropertyExtension> source) {
		PropertyList list = new PropertyList(false);
		Extensions.installed().use(source, () -> source.thing().addTo(list));
		return list.properties().stream().map(property -> property.withValues(
				job -> Extensions.installed().ask(source, () -> property.values().apply(job), List.of())));
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
