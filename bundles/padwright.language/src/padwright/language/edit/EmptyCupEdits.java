package padwright.language.edit;

import java.util.List;

import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

import padwright.engine.length.Length;
import padwright.model.LengthText;
import padwright.model.plan.KeyService;

/** Puts the gaps of an empty cup into the text of a row. */
public final class EmptyCupEdits {

	private static final String EMPTY = " empty ";

	private EmptyCupEdits() {
	}

	/** Makes {@code gaps} those of the row; nothing where it says them already. */
	public static List<TextEdit> gaps(KeyService service, List<Length> gaps) {
		String figures = LengthText.row(gaps, service);
		if (service.getEmpty() == null) {
			return List.of(ClauseEdits.insertion(ClauseEdits.beforeEmpty(service), EMPTY + figures));
		}
		INode old = ClauseEdits.node(service.getEmpty());
		return NodeModelUtils.getTokenText(old).equals(figures) ? List.of() : List.of(ClauseEdits.replaced(old, figures));
	}
}
