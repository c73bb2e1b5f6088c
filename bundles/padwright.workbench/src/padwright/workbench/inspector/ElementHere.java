package padwright.workbench.inspector;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.text.IDocument;
import org.eclipse.xtext.resource.XtextResource;

import padwright.language.edit.ElementField;
import padwright.language.edit.ElementFields;
import padwright.language.edit.InheritedElement;
import padwright.language.edit.ListRows;
import padwright.language.edit.TextEdit;
import padwright.model.keysystem.Titled;
import padwright.workbench.Messages;
import padwright.workbench.session.Renaming;
import padwright.workbench.session.StatusLine;
import padwright.workbench.session.TextEdits;

/**
 * An element of a document, as its text was at one moment.
 *
 * @param model the document that is being edited
 * @param text of that document
 * @param inherited the element as the document inherits it, and says changes of it; nothing where it is its own
 */
record ElementHere(EObject element, XtextResource model, IDocument text, Optional<InheritedElement> inherited) {

	/** Something inherited. */
	static ElementHere of(InheritedElement inherited, XtextResource model, IDocument text) {
		return new ElementHere(inherited.thing(), model, text, Optional.of(inherited));
	}

	List<ElementField> fields() {
		return inherited.map(InheritedElement::fields).orElseGet(() -> ElementFields.of(element));
	}

	List<ElementField> fields(ListRows rows, int row) {
		return inherited.map(here -> here.fields(rows, row)).orElseGet(() -> rows.fields(row));
	}

	/** What the form about it shows. */
	List<FormLine> lines() {
		return FormLines.of(this);
	}

	/** The file and line that say the element, as in {@code boehm.keys, line 31}. */
	String owner() {
		String owner = Owner.of(element);
		return inherited.map(here -> here.change()
				.map(change -> Messages.get("inspector.changed", Owner.of(change), owner))
				.orElseGet(() -> Messages.get("inspector.inherited", owner, here.heir().getName()))).orElse(owner);
	}

	/** Whether there is a change that can be taken back. */
	boolean isChanged() {
		return inherited.flatMap(InheritedElement::change).isPresent();
	}

	/** Takes the change of what is inherited back. */
	void takeBack() {
		inherited.ifPresent(here -> apply(here.asInherited()));
	}

	/** Whether another is the same element, read anew perhaps, with the same fields. */
	boolean isLike(ElementHere other) {
		return text == other.text && element.eClass() == other.element.eClass() && isChanged() == other.isChanged()
				&& inherited.isPresent() == other.inherited.isPresent()
				&& EcoreUtil.getURI(element).equals(EcoreUtil.getURI(other.element))
				&& shapes(lines()).equals(shapes(other.lines()));
	}

	private static List<Object> shapes(List<FormLine> lines) {
		return lines.stream().<Object>map(FormLine::shape).toList();
	}

	/** Writes a value of a control into the text, as one step of undo; a name is changed wherever it is used. */
	void write(FormCell cell, String value) {
		if (!cell.field().isName()) {
			apply(cell.edit(value));
		} else if (isCurrent()) {
			Renaming.rename((Titled) cell.field().element(), value.strip());
		}
	}

	/** Writes a list with other rows into the text, as one step of undo. */
	void write(ListRows rows, List<TextEdit> edits) {
		apply(inherited.map(here -> here.edit(rows, edits)).orElse(edits));
	}

	/** Whether a row of a list can be taken out. */
	boolean canRemove(ListRows rows) {
		return rows.size() > 1 || inherited.map(here -> here.canBeEmpty(rows)).orElse(true);
	}

	/** Whether it is of the text as it is. */
	boolean isOfText() {
		return text.get().equals(model.getParseResult().getRootNode().getText());
	}

	private void apply(List<TextEdit> edits) {
		if (isCurrent()) {
			TextEdits.applyOwn(edits, text);
		}
	}

	private boolean isCurrent() {
		boolean isCurrent = isOfText();
		if (!isCurrent) {
			StatusLine.tell(Messages.get("bench.changedMeanwhile"), true);
		}
		return isCurrent;
	}
}
