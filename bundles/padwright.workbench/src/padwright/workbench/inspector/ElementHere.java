package padwright.workbench.inspector;

import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.text.IDocument;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.resource.XtextResource;

import padwright.language.edit.ElementField;
import padwright.language.edit.ElementFields;
import padwright.language.edit.SystemEdits;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.Titled;
import padwright.workbench.Messages;
import padwright.workbench.commands.RenameHandler;
import padwright.workbench.session.Positions;
import padwright.workbench.session.StatusLine;
import padwright.workbench.session.TextEdits;

/**
 * An element of a document, as its text was at one moment.
 *
 * @param model the document that is being edited
 * @param text of that document
 * @param heir the system that inherits the element from another document, and would say a change of it
 */
record ElementHere(EObject element, XtextResource model, IDocument text, Optional<KeySystem> heir) {

	List<ElementField> fields() {
		return heir.isPresent() ? ElementFields.clauses(element) : ElementFields.of(element);
	}

	/** The file and line that say the element, as in {@code boehm.keys, line 31}. */
	String owner() {
		String file = URI.decode(element.eResource().getURI().lastSegment());
		int line = NodeModelUtils.findActualNodeFor(element).getStartLine();
		return heir.isPresent() ? Messages.get("inspector.inherited", file, line, heir.get().getName())
				: Messages.get("inspector.owner", file, line);
	}

	/** Whether another is the same element, read anew perhaps, with the same fields. */
	boolean isLike(ElementHere other) {
		return text == other.text && element.eClass() == other.element.eClass()
				&& heir.isPresent() == other.heir.isPresent()
				&& EcoreUtil.getURI(element).equals(EcoreUtil.getURI(other.element))
				&& kinds(fields()).equals(kinds(other.fields()));
	}

	private static List<Object> kinds(List<ElementField> fields) {
		return fields.stream().<Object>map(field -> List.of(field.feature(), field.isEditable(),
				field.element().eClass())).toList();
	}

	/** Writes a value of a field into the text, as one step of undo. */
	void write(ElementField field, String value) {
		if (text.get().equals(model.getParseResult().getRootNode().getText())) {
			change(field, value);
		} else {
			StatusLine.tell(Messages.get("bench.changedMeanwhile"), true);
		}
	}

	/** A name is changed wherever it is used. */
	private void change(ElementField field, String value) {
		if (heir.isPresent()) {
			TextEdits.applyOwn(new SystemEdits(heir.get()).put((Titled) element,
					Map.of(field.feature().getName(), field.inWords(value))), text);
		} else if (field.isName()) {
			int place = NodeModelUtils.findNodesForFeature(field.element(), field.feature()).get(0).getOffset();
			RenameHandler.rename(text, Positions.position(text, place), ((Titled) field.element()).getName(), value.strip());
		} else {
			TextEdits.applyOwn(field.edit(value), text);
		}
	}
}
