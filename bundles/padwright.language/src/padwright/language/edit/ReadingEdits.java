package padwright.language.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.xtext.nodemodel.INode;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.LengthUnit;
import padwright.language.messages.Messages;
import padwright.model.FeelerReading;
import padwright.model.LengthText;
import padwright.model.Lengths;
import padwright.model.plan.KeyService;
import padwright.model.plan.PlanPackage;
import padwright.model.plan.Round;
import padwright.workup.solve.LeafReading;

/**
 * Puts the readings of a feeler into the text of a row. The rest of the text stays as it is, remarks
 * included.
 */
public final class ReadingEdits {

	private static final String FELT = " felt ";

	private ReadingEdits() {
	}

	/**
	 * Makes {@code readings} those of the row's last round, in the order of its hours; only figures that change are
	 * written. Begins a round where there is none.
	 *
	 * @throws IllegalArgumentException if there are none, or one cannot be said in the unit of the round
	 */
	public static List<TextEdit> latest(KeyService service, List<LeafReading> readings) {
		List<Round> rounds = service.getRounds();
		return rounds.isEmpty() ? another(service, readings) : change(rounds.get(rounds.size() - 1), readings);
	}

	/**
	 * Adds another round with these readings, at the hours of the plan.
	 *
	 * @throws IllegalArgumentException if there are none
	 */
	public static List<TextEdit> another(KeyService service, List<LeafReading> readings) {
		return another(service, List.of(), readings);
	}

	/**
	 * Adds another round with these readings.
	 *
	 * @param hours of the readings; none for those of the plan
	 * @throws IllegalArgumentException if there are no readings
	 */
	public static List<TextEdit> another(KeyService service, List<ClockHour> hours, List<LeafReading> readings) {
		requireSome(readings);
		LengthUnit document = Lengths.documentUnit(service);
		LengthUnit unit = readings.stream().flatMap(reading -> reading.slides().stream())
				.allMatch(leaf -> LengthText.number(leaf, LengthUnit.THOU).isPresent()) ? LengthUnit.THOU
						: LengthUnit.MILLIMETRE;
		String figures = readings.stream().map(reading -> figure(reading, unit)).collect(Collectors.joining(" "));
		return List.of(ClauseEdits.insertion(ClauseEdits.beforeAnotherRound(service),
				FELT + at(hours) + figures + (unit == document ? "" : " " + unit.symbol())));
	}

	private static String at(List<ClockHour> hours) {
		return hours.isEmpty() ? ""
				: hours.stream().map(ClockHour::toString).collect(Collectors.joining(" ", "at ", " : "));
	}

	private static List<TextEdit> change(Round round, List<LeafReading> readings) {
		requireSome(readings);
		LengthUnit unit = Lengths.unit(round.getUnit(), round);
		List<INode> nodes = ClauseEdits.nodes(round, PlanPackage.Literals.ROUND__READINGS);
		List<TextEdit> edits = new ArrayList<>();
		for (int index = 0; index < Math.min(nodes.size(), readings.size()); index++) {
			if (!same(round.getReadings().get(index), readings.get(index), unit)) {
				edits.add(ClauseEdits.replaced(nodes.get(index), figure(readings.get(index), unit)));
			}
		}
		if (readings.size() > nodes.size()) {
			edits.add(ClauseEdits.insertion(nodes.get(nodes.size() - 1), readings.stream().skip(nodes.size())
					.map(reading -> " " + figure(reading, unit)).collect(Collectors.joining())));
		} else if (readings.size() < nodes.size()) {
			edits.add(ClauseEdits.removal(ClauseEdits.node(round), ClauseEdits.end(nodes.get(readings.size() - 1)),
					ClauseEdits.end(nodes.get(nodes.size() - 1))));
		}
		return edits;
	}

	private static boolean same(FeelerReading old, LeafReading reading, LengthUnit unit) {
		return LeafReading.of(old, unit).equals(Optional.of(reading));
	}

	private static String figure(LeafReading reading, LengthUnit unit) {
		return reading.slides().map(leaf -> LengthText.number(leaf, unit).orElseThrow(() -> new IllegalArgumentException(
				Messages.of("edit.inexact", leaf, unit.symbol()))))
				.orElseGet(() -> (reading.lightly() ? FeelerReading.DRAGS_LIGHTLY : FeelerReading.DRAGS).toString());
	}

	private static void requireSome(List<LeafReading> readings) {
		if (readings.isEmpty()) {
			throw new IllegalArgumentException("a round needs at least one reading");
		}
	}
}
