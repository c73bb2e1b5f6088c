package padwright.workup.rules;

import static padwright.workup.rules.PropertyType.LENGTH;
import static padwright.workup.rules.PropertyType.MATERIAL;
import static padwright.workup.rules.PropertyType.NAME;
import static padwright.workup.rules.PropertyType.NUMBER;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

import org.eclipse.emf.common.util.Enumerator;

import padwright.engine.length.Length;
import padwright.model.Resolved;
import padwright.model.keysystem.Titled;
import padwright.model.stock.Material;
import padwright.workup.service.KeyJob;

/** Properties in the making: those of each key, or those that are the same for every key of a plan. */
public final class PropertyList {

	private final boolean ofPlan;
	private final List<RuleProperty> properties = new ArrayList<>();

	PropertyList(boolean ofPlan) {
		this.ofPlan = ofPlan;
	}

	List<RuleProperty> properties() {
		return List.copyOf(properties);
	}

	/** One of an open or a closed set of names; {@code possible} is empty for an open one. */
	public void names(String name, List<String> possible, Function<KeyJob, Stream<String>> values) {
		add(name, NAME, possible, job -> values.apply(job).distinct().toList());
	}

	/** The name of an article. */
	public void named(String name, Function<KeyJob, Optional<? extends Titled>> article) {
		names(name, List.of(), job -> article.apply(job).map(Titled::getName).stream());
	}

	/** One of an enumeration of the model, as the language writes it. */
	public void oneOf(String name, List<? extends Enumerator> literals,
			Function<KeyJob, Optional<? extends Enumerator>> literal) {
		someOf(name, literals, job -> literal.apply(job).stream());
	}

	/** Any of an enumeration of the model, as the language writes them. */
	public void someOf(String name, List<? extends Enumerator> literals,
			Function<KeyJob, Stream<? extends Enumerator>> values) {
		names(name, literals.stream().map(Enumerator::getLiteral).toList(),
				job -> values.apply(job).map(Enumerator::getLiteral));
	}

	/** Where {@code holds} the property has this one name; else it is not known. */
	public void mark(String name, String mark, Function<KeyJob, Boolean> holds) {
		names(name, List.of(mark), job -> holds.apply(job) ? Stream.of(mark) : Stream.empty());
	}

	/** The names of materials; broken links are passed over. */
	public void materials(String name, Function<KeyJob, Stream<Material>> materials) {
		add(name, MATERIAL, List.of(), job -> materials.apply(job)
				.flatMap(material -> Resolved.of(material).stream()).map(Material::getName).distinct().toList());
	}

	/** A length. */
	public void length(String name, Function<KeyJob, Optional<Length>> length) {
		quantity(name, LENGTH, job -> length.apply(job).map(Length::nanometres).map(BigDecimal::valueOf));
	}

	/** How many there are; not known where there are none. */
	public void count(String name, Function<KeyJob, Integer> count) {
		quantity(name, NUMBER, job -> Optional.of(BigDecimal.valueOf(count.apply(job)))
				.filter(number -> number.signum() > 0));
	}

	/** A number in the base unit of its type: nanometres for lengths, else as the language writes it. */
	public void quantity(String name, PropertyType type, Function<KeyJob, Optional<BigDecimal>> quantity) {
		add(name, type, List.of(), job -> quantity.apply(job).stream().toList());
	}

	private void add(String name, PropertyType type, List<String> names, Function<KeyJob, List<?>> values) {
		properties.add(new RuleProperty(name, type, ofPlan, names, values));
	}
}
