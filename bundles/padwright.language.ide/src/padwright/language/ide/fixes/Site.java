package padwright.language.ide.fixes;

import java.util.List;

import org.eclipse.emf.ecore.EObject;

import padwright.language.edit.TextEdit;

/**
 * Where a finding is.
 *
 * @param element the innermost element around it
 * @param offset of the text found wanting, from 0
 * @param text the text found wanting
 * @param data what the finding carries; each code of a finding says which
 */
public record Site(EObject element, int offset, String text, List<String> data) {

	public Site {
		data = List.copyOf(data);
	}

	/** Writes something else in place of the text found wanting. */
	Fix replace(String title, String replacement) {
		return Fix.of(title, new TextEdit(offset, text.length(), replacement));
	}

	/** The element as a {@code type}, or the nearest of its containers that is one; null if none is. */
	<T extends EObject> T nearest(Class<T> type) {
		for (EObject around = element; around != null; around = around.eContainer()) {
			if (type.isInstance(around)) {
				return type.cast(around);
			}
		}
		return null;
	}
}
