package padwright.workbench.inspector;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

import padwright.engine.clock.ClockHour;
import padwright.language.edit.ElementField;

/**
 * One control of a form.
 *
 * @param name that is read out
 * @param field whose value it has
 * @param place of its value, where the field has several and the control one of them
 */
record FormCell(String name, ElementField field, OptionalInt place) {

	private static final List<String> HOURS = IntStream.range(0, ClockHour.STATIONS)
			.mapToObj(station -> new ClockHour(station).toString()).toList();

	static FormCell of(String name, ElementField field) {
		return new FormCell(name, field, OptionalInt.empty());
	}

	boolean isHours() {
		return place.isEmpty() && field.isEditable() && field.feature().getEType().getInstanceClass() == ClockHour.class;
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
		return place.isPresent() && (value.isBlank() || value.strip().contains(" ")) ? field.fault("?" + value)
				: field.fault(whole(value));
	}
}
