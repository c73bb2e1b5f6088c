package padwright.language.ide.rename;

import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.conversion.IValueConverterService;
import org.eclipse.xtext.conversion.ValueConverterException;
import org.eclipse.xtext.ide.refactoring.IRenameStrategy2;
import org.eclipse.xtext.ide.refactoring.RefactoringIssueAcceptor;
import org.eclipse.xtext.ide.refactoring.RenameChange;
import org.eclipse.xtext.ide.refactoring.RenameContext;
import org.eclipse.xtext.util.IResourceScopeCache;

import com.google.inject.Inject;

import padwright.language.ide.words.Messages;

import padwright.model.keysystem.Titled;
import padwright.model.stock.Comparison;
import padwright.model.stock.Material;
import padwright.model.stock.NameValue;
import padwright.model.stock.PadKind;
import padwright.model.stock.Stock;
import padwright.workup.rules.RuleVocabulary;

/** Renames an element where it is defined and referred to, and in the rules of its stock, which tell names by text. */
public final class RenameStrategy extends IRenameStrategy2.DefaultImpl {

	@Inject
	private IValueConverterService converters;
	@Inject
	private IResourceScopeCache kept;

	@Override
	protected void doRename(EObject target, RenameChange change, RenameContext context) {
		Optional<String> obstacle = obstacle(target, change.getNewName());
		if (obstacle.isPresent()) {
			context.getIssues().add(RefactoringIssueAcceptor.Severity.FATAL, obstacle.get());
			return;
		}
		if (target instanceof Titled titled) {
			renameInRules(titled, change.getNewName());
		}
		super.doRename(target, change, context);
		forgetOldName(target.eResource().getResourceSet());
	}

	/** Documents keep what they can name until they change themselves: the old name would be written there again. */
	private void forgetOldName(ResourceSet shop) {
		shop.getResources().forEach(kept::clear);
	}

	private Optional<String> obstacle(EObject target, String name) {
		try {
			converters.toString(name, isWord(target) ? "ID" : "Name");
		} catch (ValueConverterException noName) {
			return Optional.of(Messages.of("rename.noName"));
		}
		return target instanceof Titled titled && isTaken(titled, name)
				? Optional.of(Messages.of("rename.taken", name)) : Optional.empty();
	}

	/** Names of materials and of kinds of pads are said in rules too, so that they are single words. */
	private static boolean isWord(EObject target) {
		return target instanceof Material || target instanceof PadKind;
	}

	private static boolean isTaken(Titled target, String name) {
		return target.eContainer().eContents().stream().anyMatch(other -> other != target
				&& other.eClass() == target.eClass() && name.equals(((Titled) other).getName()));
	}

	private static void renameInRules(Titled target, String name) {
		Stock stock = EcoreUtil2.getContainerOfType(target.eContainer(), Stock.class);
		if (stock == null) {
			return;
		}
		for (Comparison comparison : EcoreUtil2.getAllContentsOfType(stock, Comparison.class)) {
			if (comparison.getValue() instanceof NameValue value && target.getName().equals(value.getName())
					&& RuleVocabulary.names(comparison.getProperty(), target)) {
				value.setName(name);
			}
		}
	}
}
