package padwright.workbench.inspector;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

import padwright.engine.clock.ClockHour;
import padwright.language.edit.ElementField;
import padwright.language.edit.InheritedElement;
import padwright.language.edit.TextEdit;

/**
 * One control of a form.
 *
 * @param name that is read out
 * @param field whose value it has
 * @param place of its value, where the field has several and the control one of them
 * @param inherited what the field is of, where that is inherited
 */
record FormCell(String name, ElementField field, OptionalInt place, Optional<InheritedElement> inherited) {

	private static final List<String> HOURS = IntStream.range(0, ClockHour.STATIONS)
			.mapToObj(station -> new ClockHour(station).toString()).toList();

	boolean isHours() {
		return place.isEmpty() && field.feature().getEType().getInstanceClass() == ClockHour.class;
	}

	boolean isSeveral() {
		return field.feature().isMany();
	}

	/** What it can be, where that is a list. */
	List<String> choices(boolean isInARow) {
		return isHours() && isInARow && !isSeveral() ? HOURS : field.choices();
	}

	String text() {
		return place.isPresent() ? values(field).get(place.getAsInt()) : field.text();
	}

	static List<String> values(ElementField field) {
		return List.of(field.text().strip().split("\\s+"));
	}

	/** The value of the whole field with another one of the control. */
	String whole(String value) {
		if (place.isEmpty()) {
			return value;
		}
		List<String> values = new ArrayList<>(values(field));
		values.set(place.getAsInt(), value.strip());
		return String.join(" ", values);
	}

	/** What is wrong with a value of the control; nothing if it can be written. */
	Optional<String> fault(String value) {
		boolean isNoCell = place.isPresent() && (value.isBlank() || value.strip().contains(" "));
		String all = isNoCell ? "?" + value : whole(value);
		return inherited.map(here -> here.fault(field, all)).orElseGet(() -> field.fault(all));
	}

	/** The edits that write a value of the control. */
	List<TextEdit> edit(String value) {
		return inherited.map(here -> here.edit(field, whole(value))).orElseGet(() -> field.edit(whole(value)));
	}

	/** The file and line that say it, or would. */
	String owner() {
		return Owner.of(field.element());
	}
}
