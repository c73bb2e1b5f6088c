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
 * @param clause the whole of it, where that can be written; one of the two there is
 * @param seenFrom from where names are looked up
 */
public record ElementField(EObject element, EStructuralFeature feature, String text, Optional<FieldPlace> place,
		Optional<ClauseText> clause, EObject seenFrom) {

	ElementField(EObject element, EStructuralFeature feature, String text, Optional<FieldPlace> place,
			Optional<ClauseText> clause) {
		this(element, feature, text, place, clause, element);
	}

	/** Whether it is the name that others refer to, so that only renaming may change it. */
	public boolean isName() {
		return element instanceof Titled && feature == KeySystemPackage.Literals.TITLED__NAME;
	}

	/** Whether it can be taken away again. */
	public boolean isOptional() {
		return clause.isPresent() && clause.get().fault("").isEmpty();
	}

	/** All that it can be, where that is a list of words or names; else empty. */
	public List<String> choices() {
		return names().map(reference -> ReferenceNames.of(seenFrom, reference))
				.orElseGet(() -> feature.getEType() instanceof EEnum words && !feature.isMany()
						? words.getELiterals().stream().map(literal -> literal.getLiteral()).toList()
						: clause.flatMap(ClauseText::word).map(List::of).orElse(List.of()));
	}

	/** What it is one name of; of a list that is not there yet, what its first entry begins with. */
	private Optional<EReference> names() {
		if (!(feature instanceof EReference reference)) {
			return Optional.empty();
		}
		if (reference.isContainment()) {
			return text.isEmpty() ? clause.flatMap(ClauseText::firstName) : Optional.empty();
		}
		return Optional.of(reference).filter(one -> place.isPresent() || !one.isMany());
	}

	/** The same field of something inherited, where it is looked at from an heir, whose names it can have. */
	ElementField seenFrom(EObject heir) {
		return new ElementField(element, feature, text, place, clause, heir);
	}

	/** What is wrong with a new value, in words; nothing if it can be written. */
	public Optional<String> fault(String value) {
		if (isTakenOut(value)) {
			return Optional.empty();
		}
		boolean isName = names().isPresent() && choices().contains(value);
		if (isName || place.isPresent() && names().isPresent()) {
			return isName ? Optional.empty()
					: Optional.of(value.isBlank() ? Messages.of("field.empty") : Messages.of("field.notHere", value));
		}
		if (place.isEmpty()) {
			return clause.orElseThrow().fault(value);
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
	 * @throws IllegalArgumentException if it has a fault
	 */
	public List<TextEdit> edit(String value) {
		fault(value).ifPresent(fault -> {
			throw new IllegalArgumentException(fault);
		});
		return isTakenOut(value) || place.isEmpty() ? clause.orElseThrow().edit(written(value))
				: List.of(place.get().edit(written(value)));
	}

	private String written(String value) {
		return names().isPresent() && choices().contains(value) ? NameFault.reference(value)
				: place.isPresent() && !value.isBlank() ? FieldText.of(element, rule()).written(value) : value;
	}

	private AbstractRule rule() {
		return place.orElseThrow().rule();
	}
}
