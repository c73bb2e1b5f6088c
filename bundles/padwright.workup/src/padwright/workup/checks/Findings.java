package padwright.workup.checks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.EObject;

/**
 * Collects findings in the order in which they are made. After {@link #MOST_ALIKE} of one kind at one element no more of
 * that kind are kept there: who has twenty wrong numbers in a row needs no more to see it.
 */
public final class Findings {

	/** Most findings of one code at one element. */
	public static final int MOST_ALIKE = 20;

	private record Kind(EObject element, String code) {
	}

	private final List<Finding> all = new ArrayList<>();
	private final Map<Kind, Integer> counts = new HashMap<>();

	public void error(String code, Place place, Advice advice, String... data) {
		add(Severity.ERROR, code, place, advice, data);
	}

	public void warning(String code, Place place, Advice advice, String... data) {
		add(Severity.WARNING, code, place, advice, data);
	}

	public void info(String code, Place place, Advice advice, String... data) {
		add(Severity.INFO, code, place, advice, data);
	}

	public void add(Severity severity, String code, Place place, Advice advice, String... data) {
		if (counts.merge(new Kind(place.element(), code), 1, Integer::sum) <= MOST_ALIKE) {
			all.add(new Finding(place, severity, code, advice, List.of(data)));
		}
	}

	public List<Finding> all() {
		return List.copyOf(all);
	}
}
