package padwright.language.start;

import java.time.LocalDate;
import java.util.List;

import padwright.engine.length.LengthUnit;

/**
 * A new plan: what its first line says, the lines below it, and one row a key.
 *
 * @param name must be a name without fault
 * @param title shown to people; may be empty
 * @param system its name
 * @param serial of the instrument; may be empty
 * @param stock its name; may be empty
 * @param keys names, in the order of the rows
 */
public record PlanText(String name, String title, String system, String serial, String stock, LocalDate date,
		PlanLines lines, List<String> keys) {

	/** @throws IllegalArgumentException if the name has a fault */
	public PlanText {
		NameFault.require(name);
		keys = List.copyOf(keys);
	}

	/** The text of the document. */
	@Override
	public String toString() {
		StringBuilder text = new StringBuilder();
		if (lines.unit() != LengthUnit.THOU) {
			text.append("unit ").append(lines.unit().symbol()).append("\n\n");
		}
		text.append("plan ").append(name).append(Titles.behind("", title)).append(" for ")
				.append(NameFault.reference(system)).append(Titles.behind(" serial", serial))
				.append(stock.isEmpty() ? "" : " with " + NameFault.reference(stock)).append(" {\n");
		line(text, "date " + date);
		lines.lines().forEach(line -> line(text, line));
		keys.forEach(key -> line(text, "key " + NameFault.reference(key)));
		return text.append("}\n").toString();
	}

	private static void line(StringBuilder text, String line) {
		text.append('\t').append(line).append('\n');
	}
}
