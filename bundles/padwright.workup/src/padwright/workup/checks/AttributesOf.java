package padwright.workup.checks;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;

/**
 * The single attributes of one type that each kind of element has. They are sought out once for each kind, since a check
 * that asks for them looks at every element of thousands of documents.
 */
public final class AttributesOf {

	private final Class<?> type;
	private final Map<EClass, List<EAttribute>> byKind = new ConcurrentHashMap<>();

	public AttributesOf(Class<?> type) {
		this.type = type;
	}

	/** In the order of the model. */
	public List<EAttribute> in(EClass kind) {
		List<EAttribute> known = byKind.get(kind);
		return known == null ? byKind.computeIfAbsent(kind, this::find) : known;
	}

	private List<EAttribute> find(EClass kind) {
		return kind.getEAllAttributes().stream()
				.filter(attribute -> !attribute.isMany() && attribute.getEAttributeType().getInstanceClass() == type)
				.toList();
	}
}
