package padwright.workup.checks.stock;

import java.util.List;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

import padwright.model.stock.Adhesive;
import padwright.model.stock.Material;
import padwright.model.stock.Stock;
import padwright.model.stock.StockPackage;
import padwright.workup.cautions.HazardStatements;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;

/** Hazard statements have the form of a code of a data sheet; wording is printed where it was checked. */
public final class HazardCheck extends Check<Stock> {

	public HazardCheck() {
		super(Stock.class);
	}

	@Override
	protected void check(Stock stock, Findings findings) {
		for (Material material : stock.getMaterials()) {
			check(material, StockPackage.Literals.MATERIAL__HAZARDS, material.getHazards(), findings);
		}
		for (Adhesive adhesive : stock.getAdhesives()) {
			check(adhesive, StockPackage.Literals.ADHESIVE__HAZARDS, adhesive.getHazards(), findings);
		}
	}

	private static void check(EObject article, EAttribute attribute, List<String> codes, Findings findings) {
		for (int index = 0; index < codes.size(); index++) {
			if (codes.get(index) != null && !HazardStatements.isWellFormed(codes.get(index))) {
				findings.warning(IssueCodes.HAZARD_UNKNOWN, new Place(article, attribute, index),
						Advice.of(IssueCodes.HAZARD_UNKNOWN, codes.get(index)));
			}
		}
	}
}
