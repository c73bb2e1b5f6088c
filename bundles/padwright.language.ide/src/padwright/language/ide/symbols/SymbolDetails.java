package padwright.language.ide.symbols;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.ide.server.symbol.DocumentSymbolMapper.DocumentSymbolDetailsProvider;

import com.google.inject.Singleton;

import padwright.model.Resolved;
import padwright.model.keysystem.Titled;
import padwright.model.plan.KeyService;

/** The label beside a name in the outline. */
@Singleton
public final class SymbolDetails extends DocumentSymbolDetailsProvider {

	@Override
	public String getDetails(EObject element) {
		if (element instanceof Titled titled) {
			return label(titled);
		}
		return element instanceof KeyService row
				? Resolved.of(row.getKey()).map(SymbolDetails::label).orElse("") : "";
	}

	private static String label(Titled titled) {
		return titled.getLabel() == null ? "" : titled.getLabel();
	}
}
