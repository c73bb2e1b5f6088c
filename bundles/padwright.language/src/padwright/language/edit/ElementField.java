package padwright.language.edit;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.AbstractRule;

import padwright.language.messages.Messages;
import padwright.language.start.NameFault;
import padwright.model.keysystem.KeySystemPackage;
import padwright.model.keysystem.Titled;

/**
 * One clause of an element of a document, as a form shows it. Several values stand apart by blanks.
 *
 * @param element that has it; a part of the one that the form is about, or the one that would have the part
 * @param feature that the clause says
 * @param text as it is written, without the words that lead to it and the quotes of a text or name; empty where nothing is
 *     written
 * @param place where values can be written; nothing where it is more, or less, than values
 * @param clause the whole of it, where that can be written
 */
public record ElementField(EObject element, EStructuralFeature feature, String text, Optional<FieldPlace> place,
		Optional<ClauseText> clause) {

	/** Whether a form may change it. */
	public boolean isEditable() {
		return place.isPresent() || clause.isPresent();
	}

	/** Whether it is the name that others refer to, so that only renaming may change it. */
	public boolean isName() {
		return element instanceof Titled && feature == KeySystemPackage.Literals.TITLED__NAME;
	}

	/** Whether it can be taken away again. */
	public boolean isOptional() {
		return clause.isPresent() && clause.get().fault("").isEmpty();
	}

	/** All that it can be, where that is a list of words; else empty. */
	public List<String> choices() {
		return feature instanceof EReference reference && place.isPresent() ? ReferenceNames.of(element, reference)
				: feature.getEType() instanceof EEnum words && !feature.isMany()
						? words.getELiterals().stream().map(literal -> literal.getLiteral()).toList()
						: clause.flatMap(ClauseText::word).map(List::of).orElse(List.of());
	}

	/** What is wrong with a new value, in words; nothing if it can be written. */
	public Optional<String> fault(String value) {
		if (isTakenOut(value) || place.isEmpty()) {
			return clause.flatMap(whole -> whole.fault(value));
		}
		if (feature instanceof EReference) {
			return choices().contains(value) ? Optional.empty() : Optional.of(Messages.of("field.notHere", value));
		}
		return feature.isMany() ? faultOfSeveral(value) : FieldText.of(element, rule()).fault(value);
	}

	private boolean isTakenOut(String value) {
		return value.isBlank() && isOptional();
	}

	private Optional<String> faultOfSeveral(String values) {
		FieldText each = FieldText.of(element, rule());
		return values.isBlank() ? each.fault(values) : Stream.of(values.strip().split("\\s+"))
				.flatMap(value -> each.fault(value).stream()).findFirst();
	}

	/**
	 * The edits that write a new value, or take it away, and leave the rest of the text as it is.
	 *
	 * @throws IllegalArgumentException if it has a fault, or the field can only be read
	 */
	public List<TextEdit> edit(String value) {
		if (!isEditable()) {
			throw new IllegalArgumentException(feature.getName() + " can only be read");
		}
		fault(value).ifPresent(fault -> {
			throw new IllegalArgumentException(fault);
		});
		return isTakenOut(value) || place.isEmpty() ? clause.orElseThrow().edit(value)
				: List.of(place.get().edit(feature instanceof EReference ? NameFault.reference(value)
						: FieldText.of(element, rule()).written(value)));
	}

	/** A value with the words that lead to it, as in {@code at 12.5}: as a change says it. */
	public String inWords(String value) {
		return clause.orElseThrow().written(value);
	}

	private AbstractRule rule() {
		return place.orElseThrow().rule();
	}
}
