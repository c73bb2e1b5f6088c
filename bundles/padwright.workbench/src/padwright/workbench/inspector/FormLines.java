package padwright.workbench.inspector;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

import padwright.engine.clock.ClockHour;
import padwright.language.edit.ElementField;
import padwright.language.edit.ElementFields;
import padwright.language.edit.ListRows;
import padwright.model.Lengths;
import padwright.model.plan.KeyService;
import padwright.model.plan.Plan;
import padwright.model.plan.PlanPackage;
import padwright.model.plan.Round;
import padwright.model.plan.ThicknessRow;
import padwright.workbench.Messages;

/** The lines of a form: a control for every clause, lists as rows, what was measured around a rim as a grid of hours. */
final class FormLines {

	private final List<FormLine> lines = new ArrayList<>();
	private final List<FormLine> grid = new ArrayList<>();
	private final List<FormLine> rounds = new ArrayList<>();
	private final Set<ClockHour> columns = new LinkedHashSet<>();
	private final List<ClockHour> planned;
	private final ElementHere here;

	private FormLines(ElementHere here) {
		this.here = here;
		planned = here.element() instanceof KeyService row && row.eContainer() instanceof Plan plan ? plan.getHours()
				: List.of();
		columns.addAll(planned);
		if (here.element() instanceof KeyService row) {
			row.getRounds().forEach(round -> columns.addAll(hours(round)));
		}
		here.fields().forEach(this::add);
	}

	static List<FormLine> of(ElementHere here) {
		FormLines all = new FormLines(here);
		if (!all.grid.isEmpty()) {
			all.lines.add(FormLine.headings(Messages.get("inspector.grid"),
					all.columns.stream().map(ClockHour::toString).toList()));
		}
		all.lines.addAll(all.grid);
		all.lines.addAll(all.rounds);
		return all.lines;
	}

	private List<ClockHour> hours(Round round) {
		return round.getHours().isEmpty() ? planned : round.getHours();
	}

	private void add(ElementField field) {
		boolean isGap = field.element() instanceof ThicknessRow row && row.eContainingFeature() == PlanPackage.Literals
				.KEY_SERVICE__EMPTY && field.feature() == PlanPackage.Literals.THICKNESS_ROW__VALUES;
		if (isGap && isInGrid(field, planned)) {
			grid.add(row(FieldWords.part(field), field, planned,
					Lengths.unit(((ThicknessRow) field.element()).getUnit(), field.element()).symbol()));
		} else if (field.feature() == PlanPackage.Literals.KEY_SERVICE__ROUNDS && !field.text().isEmpty()) {
			List<Round> felt = ((KeyService) field.element()).getRounds();
			for (int index = 0; index < felt.size(); index++) {
				addRound(Messages.get("inspector.round", index + 1), felt.get(index));
			}
		} else {
			add("", field, lines);
		}
	}

	private void addRound(String name, Round round) {
		ElementFields.of(round).forEach(field -> add(name, field, rounds));
	}

	private void add(String of, ElementField field, List<FormLine> to) {
		Optional<ListRows> rows = ListRows.of(field);
		boolean isReading = field.element() instanceof Round && field.feature() == PlanPackage.Literals.ROUND__READINGS;
		String name = of.isEmpty() ? FieldWords.name(field) : Messages.get("inspector.part", of, FieldWords.name(field));
		if (isReading && isInGrid(field, hours((Round) field.element()))) {
			Round round = (Round) field.element();
			grid.add(row(of.isEmpty() ? FieldWords.part(field) : of, field, hours(round),
					Lengths.unit(round.getUnit(), round).symbol()));
		} else if (rows.isPresent()) {
			for (int row = 0; row < rows.get().size(); row++) {
				add(Messages.get("inspector.row", name, row + 1), new FormLine.Listed(rows.get(), row), to);
			}
		} else {
			to.add(FormLine.of(cell(name, field)));
		}
	}

	/** A part of a list: one line, or where it has too much for that a line with what it begins with, and more below. */
	private void add(String label, FormLine.Listed row, List<FormLine> to) {
		List<ElementField> fields = here.fields(row.rows(), row.row());
		int beside = row.rows().isInOneLine() ? fields.size() : 1;
		to.add(FormLine.listed(label, fields.stream().limit(beside)
				.map(field -> cell(Messages.get("inspector.part", label, FieldWords.attribute(field)), field)).toList(), row));
		fields.stream().skip(beside).forEach(field -> {
			int lines = to.size();
			add(label, field, to);
			to.subList(lines, to.size()).replaceAll(line -> line.under(label));
		});
	}

	private FormCell cell(String name, ElementField field) {
		return new FormCell(name, field, OptionalInt.empty(), here.inherited());
	}

	/** A half typed row, or one of a plan that does not say its hours, is typed as it is written. */
	private static boolean isInGrid(ElementField field, List<ClockHour> hours) {
		return field.place().isPresent() && !hours.isEmpty() && FormCell.values(field).size() == hours.size();
	}

	private FormLine row(String label, ElementField field, List<ClockHour> hours, String unit) {
		List<Optional<FormCell>> cells = columns.stream().map(hours::indexOf).map(place -> place < 0
				? Optional.<FormCell>empty()
				: Optional.of(new FormCell(Messages.get("inspector.cell", label, hours.get(place)), field,
						OptionalInt.of(place), here.inherited()))).toList();
		return FormLine.grid(label, cells, unit);
	}
}
