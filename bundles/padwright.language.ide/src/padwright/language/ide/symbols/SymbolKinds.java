package padwright.language.ide.symbols;

import java.util.Map;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.lsp4j.SymbolKind;
import org.eclipse.xtext.ide.server.symbol.DocumentSymbolMapper.DocumentSymbolKindProvider;

import com.google.inject.Singleton;

import padwright.model.keysystem.KeySystemPackage;
import padwright.model.plan.PlanPackage;
import padwright.model.stock.StockPackage;

/** Which of the protocol's symbols, made for programs, stands for what. */
@Singleton
public final class SymbolKinds extends DocumentSymbolKindProvider {

	private static final Map<EClass, SymbolKind> KINDS = Map.ofEntries(
			Map.entry(KeySystemPackage.Literals.KEY_SYSTEM, SymbolKind.Class),
			Map.entry(KeySystemPackage.Literals.KEY, SymbolKind.Key),
			Map.entry(KeySystemPackage.Literals.TOUCH, SymbolKind.Interface),
			Map.entry(KeySystemPackage.Literals.JOINT, SymbolKind.Struct),
			Map.entry(KeySystemPackage.Literals.HOLE, SymbolKind.Field),
			Map.entry(KeySystemPackage.Literals.ROD, SymbolKind.Struct),
			Map.entry(KeySystemPackage.Literals.KEY_CHANGE, SymbolKind.Key),
			Map.entry(KeySystemPackage.Literals.KEY_REMOVAL, SymbolKind.Key),
			Map.entry(KeySystemPackage.Literals.FINGERING, SymbolKind.Event),
			Map.entry(StockPackage.Literals.STOCK, SymbolKind.Package),
			Map.entry(StockPackage.Literals.MATERIAL, SymbolKind.Constant),
			Map.entry(StockPackage.Literals.RULE, SymbolKind.Operator),
			Map.entry(StockPackage.Literals.PREFERENCE, SymbolKind.Operator),
			Map.entry(PlanPackage.Literals.PLAN, SymbolKind.Module),
			Map.entry(PlanPackage.Literals.KEY_SERVICE, SymbolKind.Key),
			Map.entry(PlanPackage.Literals.REGULATION, SymbolKind.Event));

	/** Articles of a stock are objects. */
	@Override
	protected SymbolKind getSymbolKind(EClass type) {
		return KINDS.getOrDefault(type, SymbolKind.Object);
	}
}
