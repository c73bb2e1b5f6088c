package padwright.language.edit;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.xtext.AbstractRule;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.nodemodel.INode;

import padwright.model.stock.StockPackage;

/**
 * The parts of an element that stand in a list, as rows of a form: layers of a pad, partial shims, couplings. The sizes of
 * an assortment are read as one line.
 *
 * @param element that has the list
 */
public record ListRows(EObject element, EReference list) {

	/** More do not fit beside each other. */
	private static final int MOST_FIELDS = 4;

	/** The list that a field says; nothing where it is none, or is empty. */
	public static Optional<ListRows> of(ElementField field) {
		if (!(field.feature() instanceof EReference list) || !list.isContainment() || !list.isMany()
				|| list == StockPackage.Literals.ASSORTMENT__SIZES) {
			return Optional.empty();
		}
		return Optional.of(new ListRows(field.element(), list)).filter(rows -> rows.size() > 0
				&& rows.nodes().size() == rows.size());
	}

	/** Whether a part has few enough fields, and no list of its own, to stand in one line of a form. */
	public boolean isInOneLine() {
		return list.getEReferenceType().getEAllContainments().stream().noneMatch(EReference::isMany)
				&& IntStream.range(0, size()).allMatch(row -> fields(row).size() <= MOST_FIELDS);
	}

	private List<INode> nodes() {
		return ClauseEdits.nodes(element, list);
	}

	private EObject part(int row) {
		return (EObject) ((List<?>) element.eGet(list)).get(row);
	}

	public int size() {
		return ((List<?>) element.eGet(list)).size();
	}

	/** What can be said of a part, in the order of the grammar. */
	public List<ElementField> fields(int row) {
		return ElementFields.ofPart(part(row));
	}

	/** Takes a part out; with the last one the clause goes. */
	public List<TextEdit> remove(int row) {
		if (isByComma()) {
			return new ListClause(element, list).remove(Set.of(row));
		}
		INode node = nodes().get(row);
		String text = node.getRootNode().getText();
		int lineStart = text.lastIndexOf('\n', node.getOffset()) + 1;
		int lineEnd = text.indexOf('\n', ClauseEdits.end(node)) + 1;
		boolean isALine = lineEnd > 0 && text.substring(lineStart, node.getOffset()).isBlank()
				&& text.substring(ClauseEdits.end(node), lineEnd).isBlank();
		int start = isALine ? lineStart : node.getOffset() - blanks(node).length();
		return List.of(ClauseEdits.removal(node, start, isALine ? lineEnd : ClauseEdits.end(node)));
	}

	/** Says a part once more behind itself, to be changed then. */
	public List<TextEdit> again(int row) {
		INode node = nodes().get(row);
		return List.of(ClauseEdits.insertion(node, (isByComma() ? ", " : blanks(node)) + text(node)));
	}

	/** Has a part and the next one change places. */
	public List<TextEdit> swap(int row) {
		INode one = nodes().get(row);
		INode other = nodes().get(row + 1);
		return List.of(ClauseEdits.replaced(one, text(other)), ClauseEdits.replaced(other, text(one)));
	}

	private static String text(INode node) {
		return node.getRootNode().getText().substring(node.getOffset(), ClauseEdits.end(node));
	}

	private boolean isByComma() {
		Optional<AbstractRule> rule = ElementFields.rule(element);
		return rule.filter(of -> GrammarUtil.containedAssignments(of).stream()
				.filter(each -> each.getFeature().equals(list.getName())).count() > 1).isPresent();
	}

	/** What stands before a part: a blank, or the beginning of its line. */
	private static String blanks(INode node) {
		String text = node.getRootNode().getText();
		int start = node.getOffset();
		while (start > 0 && Character.isWhitespace(text.charAt(start - 1))) {
			start--;
		}
		return text.substring(start, node.getOffset());
	}
}
