package padwright.language.start;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;

/**
 * What is said of a new plan before its rows. All texts may be empty, which leaves the line out, or the word.
 *
 * @param tolerance the gap that passes
 * @param bed least and greatest sum of the full shims in thou, as in {@code 13..16}
 * @param player name of whoever plays the instrument
 * @param tone a word of the language
 * @param saliva a word of the language
 * @param pad name of an article of the stock; the next three only count with it
 * @param disc likewise
 * @param film likewise
 * @param glue likewise
 * @param hours that are read, apart by blanks
 */
public record FirstLines(Length tolerance, String bed, String player, String tone, String saliva, String pad,
		String disc, String film, String glue, String hours) {

	/** Eight hours miss less than four: the saddle that lies between them. */
	public static final String USUAL_HOURS = "12 1.5 3 4.5 6 7.5 9 10.5";

	private static final String RANGE = "\\d+(\\.\\d+)?\\.\\.\\d+(\\.\\d+)?";

	/** Which text cannot be written. */
	public enum Fault {
		BED, HOURS
	}

	/** What is wrong; nothing where all can be written. */
	public Optional<Fault> fault() {
		return !isRange(bed) ? Optional.of(Fault.BED) : areHours(hours) ? Optional.empty() : Optional.of(Fault.HOURS);
	}

	private static boolean isRange(String text) {
		if (text.isEmpty()) {
			return true;
		}
		String[] ends = text.split("\\.\\.");
		return text.matches(RANGE) && new BigDecimal(ends[0]).compareTo(new BigDecimal(ends[1])) <= 0;
	}

	private static boolean areHours(String text) {
		try {
			return text.isEmpty()
					|| Stream.of(text.split("\\s+")).map(BigDecimal::new).map(ClockHour::ofHour).distinct().count() > 1;
		} catch (IllegalArgumentException noHours) {
			return false;
		}
	}

	/**
	 * The lines, in the order of the grammar.
	 *
	 * @throws IllegalArgumentException if there is a fault
	 */
	public PlanLines lines() {
		fault().ifPresent(fault -> {
			throw new IllegalArgumentException(fault.name());
		});
		List<String> lines = new ArrayList<>(List.of(PlanLines.seat(tolerance)));
		if (!bed.isEmpty()) {
			lines.add("bed " + bed + " thou");
		}
		if (!(player + tone + saliva).isEmpty()) {
			lines.add("player" + Titles.behind("", player) + " {" + said(" tone ", tone) + said(" saliva ", saliva) + " }");
		}
		if (!pad.isEmpty()) {
			lines.add("fit " + NameFault.reference(pad) + named(" on ", disc) + named(" with ", film)
					+ named(" glue ", glue));
		}
		if (!hours.isEmpty()) {
			lines.add("read at " + String.join(" ", hours.split("\\s+")));
		}
		return new PlanLines(LengthUnit.THOU, lines);
	}

	private static String said(String word, String value) {
		return value.isEmpty() ? "" : word + value;
	}

	private static String named(String word, String name) {
		return name.isEmpty() ? "" : word + NameFault.reference(name);
	}
}
