package padwright.workbench.inspector;

import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.text.IDocument;
import org.eclipse.xtext.resource.XtextResource;

import padwright.language.edit.ElementField;
import padwright.language.edit.ElementFields;
import padwright.workbench.Messages;
import padwright.workbench.session.StatusLine;
import padwright.workbench.session.TextEdits;

/**
 * An element of a document, as its text was at one moment.
 *
 * @param model the document that it is of
 * @param text that is being edited
 */
record ElementHere(EObject element, XtextResource model, IDocument text) {

	List<ElementField> fields() {
		return ElementFields.of(element);
	}

	/** Whether another is the same element, read anew perhaps, with the same fields. */
	boolean isLike(ElementHere other) {
		return text == other.text && element.eClass() == other.element.eClass()
				&& model.getURIFragment(element).equals(other.model.getURIFragment(other.element))
				&& kinds(fields()).equals(kinds(other.fields()));
	}

	private static List<Object> kinds(List<ElementField> fields) {
		return fields.stream().<Object>map(field -> List.of(field.feature(), field.isEditable(),
				field.element().eClass())).toList();
	}

	/** Writes a value of a field into the text, as one step of undo. */
	void write(ElementField field, String value) {
		if (text.get().equals(model.getParseResult().getRootNode().getText())) {
			TextEdits.applyOwn(List.of(field.edit(value)), text);
		} else {
			StatusLine.tell(Messages.get("bench.changedMeanwhile"), true);
		}
	}
}
