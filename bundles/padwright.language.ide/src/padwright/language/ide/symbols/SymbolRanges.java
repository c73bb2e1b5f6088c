package padwright.language.ide.symbols;

import java.util.Map;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.Range;
import org.eclipse.xtext.ide.server.DocumentExtensions;
import org.eclipse.xtext.ide.server.symbol.DocumentSymbolMapper.DocumentSymbolRangeProvider;

import com.google.inject.Inject;
import com.google.inject.Singleton;

import padwright.model.keysystem.Change;
import padwright.model.keysystem.KeySystemPackage;
import padwright.model.keysystem.NoteRemoval;
import padwright.model.keysystem.Removal;
import padwright.model.plan.PlanPackage;
import padwright.model.stock.StockPackage;

/** What is selected of an element when it is picked in the outline: what it is called there, not its first word. */
@Singleton
public final class SymbolRanges extends DocumentSymbolRangeProvider {

	/** Of what has no name of its own. */
	private static final Map<EClass, EStructuralFeature> CALLED_BY = Map.of(
			PlanPackage.Literals.KEY_SERVICE, PlanPackage.Literals.KEY_SERVICE__KEY,
			PlanPackage.Literals.REGULATION, PlanPackage.Literals.REGULATION__DRIVER,
			KeySystemPackage.Literals.NOTE_REMOVAL, KeySystemPackage.Literals.NOTE_REMOVAL__NOTE,
			KeySystemPackage.Literals.FINGERING, KeySystemPackage.Literals.FINGERING__NOTE,
			StockPackage.Literals.RULE, StockPackage.Literals.RULE__TEXT,
			StockPackage.Literals.PREFERENCE, StockPackage.Literals.PREFERENCE__TEXT);

	@Inject
	private DocumentExtensions places;

	@Override
	public Range getSelectionRange(EObject element) {
		EStructuralFeature feature = element instanceof Change || element instanceof Removal && !isOfNote(element)
				? element.eClass().getEReferences().get(0) : CALLED_BY.get(element.eClass());
		Location called = feature == null ? null : places.newLocation(element, feature, -1);
		return called == null ? super.getSelectionRange(element) : called.getRange();
	}

	private static boolean isOfNote(EObject element) {
		return element instanceof NoteRemoval;
	}
}
