package padwright.language.ide.symbols;

import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.ide.server.symbol.DocumentSymbolMapper.DocumentSymbolNameProvider;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

import com.google.inject.Singleton;

import padwright.model.keysystem.Change;
import padwright.model.keysystem.Fingering;
import padwright.model.keysystem.NoteRemoval;
import padwright.model.keysystem.Removal;
import padwright.model.keysystem.Titled;
import padwright.model.plan.KeyService;
import padwright.model.plan.PlanPackage;
import padwright.model.plan.Regulation;
import padwright.model.stock.Preference;
import padwright.model.stock.Rule;
import padwright.model.systems.NotePitch;

/** What the elements of a document are called in its outline; those without a name are left out. */
@Singleton
public final class SymbolNames extends DocumentSymbolNameProvider {

	@Override
	public String getName(EObject element) {
		if (element instanceof Titled titled) {
			return titled.getName();
		}
		if (element instanceof KeyService) {
			return written(element, PlanPackage.Literals.KEY_SERVICE__KEY);
		}
		if (element instanceof NoteRemoval removal) {
			return prefixed("remove note ", removal.getNote());
		}
		if (element instanceof Change) {
			return prefixed("change ", target(element));
		}
		if (element instanceof Removal) {
			return prefixed("remove ", target(element));
		}
		if (element instanceof Fingering fingering) {
			return prefixed("note ", NotePitch.of(fingering));
		}
		if (element instanceof Regulation) {
			return regulation(element);
		}
		if (element instanceof Preference preference) {
			return preference.getText();
		}
		return element instanceof Rule rule ? rule.getText() : null;
	}

	/** What a change or removal is about is the one reference that is its kind's own. */
	private static String target(EObject element) {
		return written(element, element.eClass().getEReferences().get(0));
	}

	private static String regulation(EObject element) {
		String driver = written(element, PlanPackage.Literals.REGULATION__DRIVER);
		String driven = written(element, PlanPackage.Literals.REGULATION__DRIVEN);
		return driver == null || driven == null ? null : driver + " > " + driven;
	}

	private static String prefixed(String prefix, String name) {
		return name == null ? null : prefix + name;
	}

	/** A name as it stands in the text, whether or not it refers to something. */
	private static String written(EObject element, EStructuralFeature feature) {
		List<INode> nodes = NodeModelUtils.findNodesForFeature(element, feature);
		return nodes.isEmpty() ? null : NodeModelUtils.getTokenText(nodes.get(0));
	}
}
