package padwright.language.ide.fixes;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.nodemodel.INode;

import padwright.engine.length.LengthUnit;
import padwright.language.edit.TextEdit;
import padwright.model.Lengths;
import padwright.model.plan.PlanPackage;
import padwright.model.plan.Round;
import padwright.model.plan.ThicknessRow;
import padwright.model.stock.Assortment;
import padwright.model.stock.StockPackage;

/** Numbers one after another that share one unit. */
record NumberRow(EObject element, EStructuralFeature numbers, EStructuralFeature unitFeature) {

	/** The row that a finding is about, if its number stands in one. */
	static Optional<NumberRow> of(Site site) {
		return Stream.of(
				row(site.nearest(ThicknessRow.class), PlanPackage.Literals.THICKNESS_ROW__VALUES,
						PlanPackage.Literals.THICKNESS_ROW__UNIT),
				row(site.nearest(Assortment.class), StockPackage.Literals.ASSORTMENT__SIZES,
						StockPackage.Literals.ASSORTMENT__UNIT),
				row(site.element() instanceof Round round ? round : null, PlanPackage.Literals.ROUND__READINGS,
						PlanPackage.Literals.ROUND__UNIT))
				.flatMap(Optional::stream).findFirst();
	}

	private static Optional<NumberRow> row(EObject element, EStructuralFeature numbers, EStructuralFeature unit) {
		return Optional.ofNullable(element).map(row -> new NumberRow(row, numbers, unit));
	}

	LengthUnit unit() {
		return Lengths.unit((LengthUnit) element.eGet(unitFeature), element);
	}

	/** Writes another unit behind the numbers, which stay. */
	TextEdit withUnit(LengthUnit unit) {
		List<INode> old = NodeText.nodes(element, unitFeature);
		if (!old.isEmpty()) {
			return NodeText.replace(old.get(0), unit.symbol());
		}
		List<INode> all = NodeText.nodes(element, numbers);
		return NodeText.insertAfter(all.get(all.size() - 1), " " + unit.symbol());
	}
}
