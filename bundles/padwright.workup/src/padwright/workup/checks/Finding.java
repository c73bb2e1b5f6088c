package padwright.workup.checks;

import java.util.List;

/**
 * Something that a technician should know about a model.
 *
 * @param code which kind of finding, one of {@link IssueCodes}
 * @param advice what, why and the cure
 * @param data values that a quick fix needs; each code says which
 */
public record Finding(Place place, Severity severity, String code, Advice advice, List<String> data) {

	public Finding {
		data = List.copyOf(data);
	}

	/** What, why and the cure in one line. */
	public String message() {
		return advice.inOneLine();
	}
}
