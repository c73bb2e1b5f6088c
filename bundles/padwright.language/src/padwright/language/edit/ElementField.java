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

/**
 * One attribute of an element of a document, or what it refers to, as a form shows it. Several values stand apart by
 * blanks.
 *
 * @param element that has it; a part of the one that the form is about, or the one that would have the part
 * @param text as it is written, without the quotes of a text or name; empty where nothing is written
 * @param place where it can be written; nothing where it can only be read
 */
public record ElementField(EObject element, EStructuralFeature feature, String text, Optional<FieldPlace> place) {

	/** Whether a form may change it. */
	public boolean isEditable() {
		return place.isPresent();
	}

	/** All that it can be, where that is a list of words; else empty. */
	public List<String> choices() {
		return feature instanceof EReference reference ? ReferenceNames.of(element, reference)
				: feature.getEType() instanceof EEnum words && !feature.isMany()
						? words.getELiterals().stream().map(literal -> literal.getLiteral()).toList() : List.of();
	}

	/** What is wrong with a new value, in words; nothing if it can be written. */
	public Optional<String> fault(String value) {
		if (feature instanceof EReference) {
			return choices().contains(value) ? Optional.empty() : Optional.of(Messages.of("field.notHere", value));
		}
		return place.flatMap(at -> feature.isMany() ? faultOfSeveral(value) : FieldText.of(element, rule()).fault(value));
	}

	private Optional<String> faultOfSeveral(String values) {
		FieldText each = FieldText.of(element, rule());
		return values.isBlank() ? each.fault(values) : Stream.of(values.strip().split("\\s+"))
				.flatMap(value -> each.fault(value).stream()).findFirst();
	}

	/**
	 * The edit that writes a new value and leaves the rest of the text as it is.
	 *
	 * @throws IllegalArgumentException if it has a fault, or the field can only be read
	 */
	public TextEdit edit(String value) {
		FieldPlace at = place.orElseThrow(() -> new IllegalArgumentException(feature.getName() + " can only be read"));
		fault(value).ifPresent(fault -> {
			throw new IllegalArgumentException(fault);
		});
		return at.edit(feature instanceof EReference ? NameFault.reference(value)
				: FieldText.of(element, rule()).written(value));
	}

	private AbstractRule rule() {
		return place.orElseThrow().rule();
	}
}
