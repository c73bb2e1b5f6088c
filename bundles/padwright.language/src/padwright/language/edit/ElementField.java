package padwright.language.edit;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.AbstractRule;

/**
 * One attribute of an element of a document, as a form shows it.
 *
 * @param element that has it; a part of the one that the form is about
 * @param text as it is written, without the quotes of a text; empty where nothing is written
 * @param place where it can be written; nothing where it can only be read
 */
public record ElementField(EObject element, EAttribute attribute, String text, Optional<FieldPlace> place) {

	/** Whether a form may change it. */
	public boolean isEditable() {
		return place.isPresent();
	}

	/** All that it can be, where that is a list of words; else empty. */
	public List<String> choices() {
		return attribute.getEType() instanceof EEnum words
				? words.getELiterals().stream().map(literal -> literal.getLiteral()).toList() : List.of();
	}

	/** What is wrong with a new value, in words; nothing if it can be written. */
	public Optional<String> fault(String value) {
		return place.flatMap(at -> FieldText.of(element, rule()).fault(value));
	}

	/**
	 * The edit that writes a new value and leaves the rest of the text as it is.
	 *
	 * @throws IllegalArgumentException if it has a fault, or the field can only be read
	 */
	public TextEdit edit(String value) {
		FieldPlace at = place.orElseThrow(() -> new IllegalArgumentException(attribute.getName() + " can only be read"));
		fault(value).ifPresent(fault -> {
			throw new IllegalArgumentException(fault);
		});
		return at.edit(FieldText.of(element, rule()).written(value));
	}

	private AbstractRule rule() {
		return place.orElseThrow().rule();
	}
}
