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
import padwright.language.edit.ListRows;
import padwright.language.edit.SystemEdits;
import padwright.language.edit.TextEdit;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.Titled;
import padwright.workbench.Messages;
import padwright.workbench.commands.RenameHandler;
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

	/** What the form about it shows. */
	List<FormLine> lines() {
		return FormLines.of(this);
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
				&& shapes(lines()).equals(shapes(other.lines()));
	}

	private static List<Object> shapes(List<FormLine> lines) {
		return lines.stream().<Object>map(FormLine::shape).toList();
	}

	/** Writes a value of a control into the text, as one step of undo. */
	void write(FormCell cell, String value) {
		ElementField field = cell.field();
		Optional<ListRows> list = list(field);
		if (heir.isPresent() && list.isPresent()) {
			write(list.get(), field.edit(cell.whole(value)));
		} else if (isCurrent()) {
			change(field, cell.whole(value));
		}
	}

	/** The list of the element that a field is in a row of. */
	private Optional<ListRows> list(ElementField field) {
		return fields().stream().flatMap(each -> ListRows.of(each).stream())
				.filter(rows -> EcoreUtil.isAncestor(rows.element(), field.element()) && rows.element() != field.element())
				.filter(rows -> ((List<?>) rows.element().eGet(rows.list())).contains(field.element())).findFirst();
	}

	/** Writes a list with other rows into the text, as one step of undo. */
	void write(ListRows rows, List<TextEdit> edits) {
		if (isCurrent() && heir.isPresent()) {
			fields().stream().filter(field -> field.feature() == rows.list()).findFirst()
					.ifPresent(field -> change(field, rows.after(edits)));
		} else if (isCurrent()) {
			TextEdits.applyOwn(edits, text);
		}
	}

	/** Whether it is of the text as it is. */
	boolean isOfText() {
		return text.get().equals(model.getParseResult().getRootNode().getText());
	}

	private boolean isCurrent() {
		boolean isCurrent = isOfText();
		if (!isCurrent) {
			StatusLine.tell(Messages.get("bench.changedMeanwhile"), true);
		}
		return isCurrent;
	}

	/** A name is changed wherever it is used. */
	private void change(ElementField field, String value) {
		if (heir.isPresent()) {
			TextEdits.applyOwn(new SystemEdits(heir.get()).put((Titled) element,
					Map.of(field.feature().getName(), field.inWords(value))), text);
		} else if (field.isName()) {
			RenameHandler.rename((Titled) field.element(), value.strip());
		} else {
			TextEdits.applyOwn(field.edit(value), text);
		}
	}
}
