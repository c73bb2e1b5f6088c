package padwright.workup.checks;

import java.util.ArrayList;
import java.util.List;

/** Collects findings in the order in which they are made. */
public final class Findings {

	private final List<Finding> all = new ArrayList<>();

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
		all.add(new Finding(place, severity, code, advice, List.of(data)));
	}

	public List<Finding> all() {
		return List.copyOf(all);
	}
}
